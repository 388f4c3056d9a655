@echo off
rem Starts wallbook with what suits each command, and with the classes prepared that it loaded the last time.
rem The prepared classes lie below LOCALAPPDATA\wallbook; WALLBOOK_CACHE names another folder.
rem JAVA_HOME says which Java. WALLBOOK_JAVA_OPTIONS are handed to Java, such as -Xmx2g.
setlocal
set "jar=%~dp0..\lib\wallbook.jar"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"

rem Who ends what watches by Ctrl-C won't wait seconds for classes to be prepared.
set "first=%~1"
set "watches="
:next
if "%~1"=="--watch" set "watches=yes"
shift /1
if not "%~1"=="" goto next

rem What runs for a minute is worth compiling well; one house is not. A build stays small, also of a large house:
rem its heap fits one house and grows only by what is in use.
set "options=-XX:TieredStopAtLevel=1"
set "command="
for %%C in (check run wish labels export import start compare recover build build-all) do if "%first%"=="%%C" set "command=%%C"
rem An answer takes little memory; fresh memory costs more time than clearing what was used.
for %%C in (check run wish) do if "%command%"=="%%C" set "options=%options% -Xms32m -Xmn16m"
if "%command%"=="build-all" set "options="
if "%command%"=="build" if not defined watches set "options=%options% -Xms160m -Xmn28m -XX:MinHeapFreeRatio=5 -XX:MaxHeapFreeRatio=10"
if "%command%"=="build" if defined watches set "options=%options% -Xms400m -Xmn200m"

set "cache="
if defined LOCALAPPDATA set "cache=%LOCALAPPDATA%\wallbook"
if defined WALLBOOK_CACHE set "cache=%WALLBOOK_CACHE%"
set "share="
if not defined command goto start
if not defined cache goto start
for %%J in ("%jar%") do set "archive=%cache%\%command%-%%~zJ.jsa"
if exist "%archive%" (
  set "share=-XX:SharedArchiveFile="%archive%""
  goto start
)
if defined watches goto start
if not exist "%cache%" mkdir "%cache%" 2>nul
if exist "%cache%" set "share=-XX:ArchiveClassesAtExit="%archive%""

:start
"%java%" -XX:+UseSerialGC %options% %WALLBOOK_JAVA_OPTIONS% -Xshare:auto -Xlog:disable %share% -jar "%jar%" %*
exit /b %ERRORLEVEL%
