<#--
  Pieces that all documents share; every template knows them as `block`.

  <@block.warning>...</@block.warning>   what can hurt someone
  <@block.caution>...</@block.caution>   what can damage something
  <@block.note>...</@block.note>         what helps to know
  <@block.figure view.plan>caption</@block.figure>   a drawing or photograph with its caption
  <@block.photos view.photos/>           photographs, each with its caption
  <@block.compact>...</@block.compact>   a table of many columns, in smaller type; the widths of its
                                         columns in per cent: <@block.compact columns="40 30 30">
  <@block.small>...</@block.small>       what a result takes for granted, in smaller type
  <@block.keep>...</@block.keep>         what must not be split between pages
  <@block.index>...</@block.index>       a table of links, each with <@block.folio name/>, the page of the
                                         anchor of that name
  <@block.form>...</@block.form>         a list whose items begin with ☐, to be ticked
  <@block.wide>...</@block.wide>         a part on sheets that lie on their long side
  <@block.signing>...</@block.signing>   a table with room to write in its cells
  <@block.page/>                         what follows starts a page

  Between the tags stands Markdown; each tag stands on a line of its own.
-->
<#macro box kind>
<div class="box ${kind}">
<p class="word"><#if kind == "warning">⚠ </#if>${say("theme." + kind)}</p>

<#nested>

</div>
</#macro>
<#macro warning>
<@box "warning"><#nested></@box>
</#macro>
<#macro caution>
<@box "caution"><#nested></@box>
</#macro>
<#macro note>
<@box "note"><#nested></@box>
</#macro>
<#macro figure drawing>
<div class="figure">
${.data_model.figure(drawing)}

<div class="caption">

<#nested>

</div>
</div>
</#macro>
<#macro photos views>
<#if views?has_content>
<div class="photos">
<#list views as photo>
<div class="figure<#if photo.upright> upright</#if>">
${.data_model.figure(photo.figure)}

<div class="caption">

**${photo.shown?cap_first}.** ${photo.caption}

</div>
</div>
</#list>
</div>
</#if>

</#macro>
<#macro compact columns="">
<div class="compact"<#if columns?has_content> data-columns="${columns}"</#if>>

<#nested>

</div>
</#macro>
<#macro form>
<div class="form">

<#nested>

</div>
</#macro>
<#macro small>
<div class="small">

<#nested>

</div>
</#macro>
<#macro signing columns="">
<div class="signing"<#if columns?has_content> data-columns="${columns}"</#if>>

<#nested>

</div>
</#macro>
<#macro index>
<div class="index">

<#nested>

</div>
</#macro>
<#macro folio target><span class="folio" data-page-of="#${anchor(target)}"></span></#macro>
<#macro keep>
<div class="keep">

<#nested>

</div>
</#macro>
<#macro wide>
<div class="wide">

<#nested>

</div>
</#macro>
<#macro page>
<div class="page-break"></div>

</#macro>
