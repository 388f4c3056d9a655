<#--
  Computed results, as several documents show them:

  <@results.table view.results/>   question, answer, value, limit, margin, what decides, source
  <@results.sources view.sources/> what the numbers in square brackets stand for
-->
<#macro decides result><#if result.missing?has_content>${say("result.missing", {"missing": result.missing?join("; ")})}<#else>${result.limitedBy!"—"}</#if></#macro>
<#macro table rows>
<@block.compact columns="29 10 10 10 10 25 6">
| ${say("result.asked")} | ${say("result.verdict")} | ${say("result.value")} | ${say("result.limit")} | ${say("result.margin")} | ${say("result.decides")} | ${say("result.source")} |
|:--|:--|:--|:--|:--|:--|:--|
<#list rows as result>
| ${result.asked} | ${result.verdict} | ${result.value!"—"} | ${result.limit!"—"} | ${result.margin!"—"} | <@decides result/> | \[${result.source}\] |
</#list>
</@block.compact>
<@assumed rows/>

</#macro>
<#macro assumed rows>
<#local all = []>
<#list rows as result><#list result.assumptions as text><#if !all?seq_contains(text)><#local all = all + [text]></#if></#list></#list>
<#if all?has_content>

<@block.small>
${say("result.assumed", {"text": all?join("; ")})}.
</@block.small>
</#if>
</#macro>
<#macro sources rows>
<@block.small>
${say("result.sources.text")}
</@block.small>

<@block.compact columns="8 66 26">
| ${say("result.source")} | ${say("result.sources.citation")} | ${say("result.sources.standing")} |
|:--|:--|:--|
<#list rows as source>
| \[${source.number}\] | ${source.citation} | ${source.standing} |
</#list>
</@block.compact>
</#macro>
