<#--
  What stands on every trade sheet:

  <@trades.rules view.head/>      address, authority and codes, who has to be licensed
  <@trades.sources view/>         what was taken for granted, and the sources
  <@trades.contacts view.head/>   whom to call, and that the sheet tells one part only
-->
<#macro sources view>
<#if view.sources?has_content>
## ${say("result.sources.heading")}

<#if view.assumed?has_content>
<@block.small>
${say("result.assumed", {"text": view.assumed?join("; ")})}.
</@block.small>

</#if>
<@block.small>
<#list view.sources as source>\[${source.number}\] ${source.citation} (${source.standing})<#sep><br/></#sep></#list><br/>
${say("trades.sources")}
</@block.small>
</#if>
</#macro>
<#macro rules head>
<@block.small>
<#if head.address??>**${head.address}.** </#if>${say("trades.rules")}<#if head.rules??> ${head.rules}</#if>
</@block.small>

</#macro>
<#macro contacts head>
## ${say("trades.contacts")}

<@block.compact columns="20 46 17 17">
| ${say("manual.contacts.role")} | ${say("manual.contacts.name")} | ${say("manual.contacts.phone")} | ${say("manual.contacts.licence")} |
|:--|:--|:--|:--|
<#list head.contacts as contact>
| ${contact.role} | ${contact.name}<#if contact.note?has_content>. ${contact.note}</#if> | ${contact.phone} | ${contact.licence} |
</#list>
</@block.compact>

<@block.small>
${say("trades.part")}
</@block.small>

</#macro>
