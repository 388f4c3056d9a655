#!/usr/bin/env python3
"""Measures whole runs of wallbook beside other printers of the same pages, in one go on one machine.

    src/bench/measure.py                 everything, some 15 minutes on a quiet machine
    src/bench/measure.py cold printers   some parts only

Needs the Debian packages chromium and weasyprint, and what `mvn package` needs. Builds the jar first, unless
--no-build is given. Prints a Markdown report and writes it to target/measured.md. Each figure is the median of
several runs, taken in turn so that a disturbance hits all alike; the least is given beside it.

Peak memory is that of the largest process, as the kernel counts it; of Chromium, which has several, it says too
little.
"""
import argparse
import math
import os
import pathlib
import platform
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
JAR = ROOT / "target/wallbook.jar"
SAMPLE = ROOT / "sample-jobs/lakeside/job.yaml"
PARTS = ["answers", "warm", "cold", "watch", "printers", "floor", "growth", "houses"]


class Run:
    """Wall time in seconds, processor time in seconds, peak memory in megabytes of one command."""

    def __init__(self, wall, cpu, memory):
        self.wall, self.cpu, self.memory = wall, cpu, memory


def run(command, allowed=(0, 1), cpus=None, **options):
    """Runs one command and measures it; a command that fails ends everything."""
    def pin():
        if cpus:
            os.sched_setaffinity(0, cpus)

    start = time.monotonic()
    with tempfile.TemporaryFile() as said:
        process = subprocess.Popen([str(c) for c in command], stdout=said, stderr=said, preexec_fn=pin, **options)
        _, status, usage = os.wait4(process.pid, 0)
        wall = time.monotonic() - start
        process.returncode = os.waitstatus_to_exitcode(status)
        if process.returncode not in allowed:
            said.seek(0)
            sys.exit(f"{command} failed:\n{said.read().decode(errors='replace')[-2000:]}")
    return Run(wall, usage.ru_utime + usage.ru_stime, usage.ru_maxrss / 1024)


class Staying:
    """A build that stays, beside a record of its own."""

    def __init__(self, command, folder, environment):
        shutil.copytree(SAMPLE.parent, folder)
        self.record, self.said, self.times = folder / "job.yaml", folder / "said.txt", 0
        with open(self.said, "w", encoding="utf-8") as said:
            self.process = subprocess.Popen(
                [*command, "build", self.record, "--into", folder / "out", "--watch"],
                stdout=said, stderr=said, env=environment)
        self.cpu = 0
        self.first = self.built(time.monotonic())

    def built(self, start):
        """Waits for the end of a build; the launcher hands its process on to Java."""
        self.times += 1
        while self.said.read_text(encoding="utf-8").count("waiting for the next save") < self.times:
            if self.process.poll() is not None:
                sys.exit(f"the build ended:\n{self.said.read_text(encoding='utf-8')}")
            time.sleep(0.01)
        wall = time.monotonic() - start
        of = pathlib.Path(f"/proc/{self.process.pid}")
        fields = (of / "stat").read_text().rsplit(")", 1)[1].split()
        cpu = (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")
        memory = next(int(line.split()[1]) for line in (of / "status").open() if line.startswith("VmHWM"))
        self.cpu, before = cpu, self.cpu
        return Run(wall, cpu - before, memory / 1024)

    def again(self):
        start = time.monotonic()
        os.utime(self.record)
        return self.built(start)

    def end(self):
        self.process.terminate()
        self.process.wait()


def joined(runs):
    """Several commands one after another, as one."""
    return Run(sum(r.wall for r in runs), sum(r.cpu for r in runs), max(r.memory for r in runs))


def in_turn(times, **tasks):
    """Runs of each task by its name: once each, then once each again, and so on."""
    runs = {name: [] for name in tasks}
    for _ in range(times):
        for name, task in tasks.items():
            runs[name].append(task())
    return runs


def median(runs):
    return statistics.median(r.wall for r in runs)


class Report:
    def __init__(self):
        self.lines = []

    def say(self, text=""):
        print(text, flush=True)
        self.lines.append(text)

    def table(self, head, rows):
        self.say("| " + " | ".join(head) + " |")
        self.say("|" + " --- |" * len(head))
        for row in rows:
            self.say("| " + " | ".join(row) + " |")
        self.say()

    def runs(self, runs, base=None):
        """A table of runs; ratios are those of the median of `base` to the others'."""
        rows = []
        for name, of in runs.items():
            row = [
                name.replace("_", " "),
                f"{median(of):.2f} s",
                f"{min(r.wall for r in of):.2f} s",
                f"{statistics.median(r.cpu for r in of):.2f} s",
                f"{max(r.memory for r in of):.0f} MB",
            ]
            if base:
                row.append("" if name == base else f"{median(runs[base]) / median(of):.2f}")
            rows.append(row)
        head = ["", "median", "least", "processor time", "peak memory"]
        self.table(head + ([f"{base.replace('_', ' ')} takes, as a share"] if base else []), rows)


class Bench:
    def __init__(self, times, work):
        self.times = times
        self.work = work
        self.report = Report()
        self.launcher = work / "dist/bin/wallbook"
        self.environment = {**os.environ, "WALLBOOK_CACHE": str(work / "cache")}
        self.environment.pop("WALLBOOK_JAVA_OPTIONS", None)

    def java(self, main, *arguments):
        path = f"{JAR}:{ROOT / 'target/test-classes'}"
        return ["java", "-cp", path, f"wallbook.bench.{main}", *arguments]

    def generate(self, runs, houses=1):
        folder = self.work / f"generated-{runs}-{houses}"
        if not folder.exists():
            run(self.java("GenerateJobs", folder, runs, *([houses] if houses > 1 else [])))
        return folder / "job.yaml" if houses == 1 else folder

    def pages(self, record, name):
        folder = self.work / name
        if not folder.exists():
            run(self.java("WritePages", record, folder), allowed=(0,))
        return sorted(folder.glob("*.html"))

    def started(self, *arguments, cpus=None):
        return run([self.launcher, *arguments], cpus=cpus, env=self.environment)

    def jar(self, *arguments):
        return run(["java", "-jar", JAR, *arguments])

    def build(self, record, how=None):
        out = self.work / "out"
        shutil.rmtree(out, ignore_errors=True)
        return (how or self.started)("build", record, "--into", out, "--allow-warnings")

    def chromium(self, pages):
        out = self.work / "chromium.pdf"
        return joined([
            run(["chromium", "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                 f"--user-data-dir={self.work / 'profile'}", f"--print-to-pdf={out}", page.as_uri()])
            for page in pages])

    def weasyprint(self, pages):
        return joined([run(["weasyprint", "-q", page, self.work / "weasy.pdf"]) for page in pages])

    # Parts

    def answers(self):
        self.report.say("### One-line answers, cold process, sample house\n")
        self.started("run", SAMPLE, "GRT-01")
        self.started("wish", SAMPLE, "--wish", "more-wifi")
        self.started("check", SAMPLE)
        self.report.runs(in_turn(
            self.times,
            run_by_the_launcher=lambda: self.started("run", SAMPLE, "GRT-01"),
            wish_by_the_launcher=lambda: self.started("wish", SAMPLE, "--wish", "more-wifi"),
            check_by_the_launcher=lambda: self.started("check", SAMPLE),
            run_by_java_jar=lambda: self.jar("run", SAMPLE, "GRT-01"),
            version_by_java_jar=lambda: self.jar("--version")))

    def warm(self):
        self.report.say("### Read, check and assess, warm process\n")
        said = subprocess.run([str(c) for c in self.java("WarmStages", 500, 1000, 2000, 5000, 10000)],
                              check=True, capture_output=True, text=True).stdout
        figures = [line.split() for line in said.splitlines()]
        rows = []
        for i, (size, least, middle) in enumerate(figures):
            growth = ""
            if i:
                before = figures[i - 1]
                growth = f"{math.log(float(least) / float(before[1])) / math.log(int(size) / int(before[0])):.2f}"
            rows.append([size, f"{1000 * float(middle):.0f} ms", f"{1000 * float(least):.0f} ms", growth])
        self.report.table(["runs", "median", "least", "exponent of growth of the least"], rows)

    def cold(self):
        self.report.say("### Whole package of the sample house, cold process: documents, page, labels\n")
        self.build(SAMPLE)
        self.report.runs(in_turn(
            self.times,
            launcher=lambda: self.build(SAMPLE),
            java_jar=lambda: self.build(SAMPLE, self.jar)))

    def watch(self):
        self.report.say("### Building again on a save, sample house\n")
        self.build(SAMPLE)
        compilers = {"quick_compiler_only": "", "both_compilers": "-XX:TieredStopAtLevel=4"}
        staying = {
            name: Staying([self.launcher], self.work / name, {**self.environment, "WALLBOOK_JAVA_OPTIONS": option})
            for name, option in compilers.items()}
        try:
            runs = in_turn(max(15, self.times), **{name: of.again for name, of in staying.items()})
            shown = {}
            for name, of in runs.items():
                shown[f"{name}, first build"] = [staying[name].first]
                shown[f"{name}, builds 2 to 6"] = of[:5]
                shown[f"{name}, builds from 7 on"] = of[5:]
            self.report.runs(shown)
        finally:
            for each in staying.values():
                each.end()

    def printers(self):
        self.report.say("### The same documents of the sample house by other printers\n")
        pages = self.pages(SAMPLE, "pages")
        self.build(SAMPLE)
        self.report.runs(in_turn(
            self.times,
            wallbook=lambda: self.build(SAMPLE),
            chromium=lambda: self.chromium(pages),
            weasyprint=lambda: self.weasyprint(pages)), base="wallbook")
        self.report.say("Ours is the whole package: record read, checked and assessed, documents, page, labels, zip.")
        self.report.say("The others are given finished pages and print them one after another.\n")

    def floor(self):
        self.report.say("### Dense schedules beside the floor, warm process, technician's as-built\n")
        said = subprocess.run([str(c) for c in self.java("PrintBesideFloor", SAMPLE)],
                              check=True, capture_output=True, text=True).stdout
        ours, tables, floor, rows = said.split()
        self.report.table(
            ["", "median", "times the floor"],
            [["whole document", f"{1000 * float(ours):.0f} ms", f"{float(ours) / float(floor):.1f}"],
             ["its tables alone, printed", f"{1000 * float(tables):.0f} ms", f"{float(tables) / float(floor):.1f}"],
             [f"floor, {rows} rows", f"{1000 * float(floor):.0f} ms", ""]])

    def growth(self):
        self.report.say("### Large records, cold process\n")
        rows = []
        before = None
        pages = self.pages(self.generate(2000), "pages-2000")
        beside = in_turn(3, wallbook=lambda: self.build(self.generate(2000)), chromium=lambda: self.chromium(pages))
        self.report.runs(beside, base="wallbook")
        for size in (500, 1000, 2000, 5000, 10000):
            runs = [self.build(self.generate(size)) for _ in range(3 if size <= 2000 else 1)]
            least = min(r.wall for r in runs)
            growth = f"{math.log(least / before[1]) / math.log(size / before[0]):.2f}" if before else ""
            rows.append([str(size), f"{median(runs):.2f} s", f"{least:.2f} s",
                         f"{max(r.memory for r in runs):.0f} MB", growth])
            before = (size, least)
        self.report.table(["runs", "median", "least", "peak memory", "exponent of growth of the least"], rows)

    def houses(self):
        self.report.say("### 100 houses of 60 cables in one call\n")
        folder = self.generate(60, 100)

        def build(cpus):
            out = self.work / "houses"
            shutil.rmtree(out, ignore_errors=True)
            return self.started("build-all", folder, "--into", out, cpus=cpus)

        first = sorted(os.sched_getaffinity(0))[:2]
        runs = in_turn(3, two_processors=lambda: build(first), one_processor=lambda: build(first[:1]))
        self.report.runs(runs, base="two_processors")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("parts", nargs="*", metavar="PART", help=", ".join(PARTS))
    parser.add_argument("--times", type=int, default=5, help="how often what is short is run")
    parser.add_argument("--no-build", action="store_true", help="measure what is built already")
    chosen = parser.parse_args()
    unknown = set(chosen.parts) - set(PARTS)
    if unknown:
        parser.error(f"no such part: {', '.join(sorted(unknown))}")
    os.chdir(ROOT)
    if not chosen.no_build:
        subprocess.run(["mvn", "-q", "-Pbench", "-DskipTests", "package"], check=True)
    with tempfile.TemporaryDirectory() as folder:
        work = pathlib.Path(folder)
        release = next((ROOT / "target").glob("wallbook-*.zip"))
        subprocess.run(["unzip", "-q", str(release), "-d", str(work / "dist")], check=True)
        unpacked = list((work / "dist").iterdir())
        if len(unpacked) == 1:
            unpacked[0].rename(work / "unpacked")
            (work / "dist").rmdir()
            (work / "unpacked").rename(work / "dist")
        bench = Bench(chosen.times, work)
        model = next((line.split(":")[1].strip() for line in open("/proc/cpuinfo") if "model name" in line), "?")
        java = subprocess.run(["java", "-version"], capture_output=True, text=True).stderr.splitlines()[0]
        bench.report.say(f"{model}, {os.cpu_count()} processors, {platform.system()} {platform.release()}, {java}")
        bench.report.say(f"Load at the start: {os.getloadavg()[0]:.1f}\n")
        for part in chosen.parts or PARTS:
            getattr(bench, part)()
        bench.report.say(f"Load at the end: {os.getloadavg()[0]:.1f}")
        (ROOT / "target/measured.md").write_text("\n".join(bench.report.lines) + "\n")


if __name__ == "__main__":
    main()
