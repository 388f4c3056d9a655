<#-- Pieces of the offline page, one for each kind of card. -->
<#-- A state or verdict: its sign is set by the stylesheet, its word always stands beside it. -->
<#macro chip sign><i class="${sign.key}">${sign.word}</i></#macro>
<#-- A drawing fits the width; enlarged, it is moved about in its frame. -->
<#macro figure drawing>
<figure class="plan">
<div class="sheet">
${plan(drawing)}
</div>
<button type="button" class="needs-script" data-other="${say("page.whole")}">${say("page.enlarge")}</button>
</figure>
</#macro>
<#macro facts rows>
<#if rows?has_content>
<dl class="facts">
<#list rows as fact>
<div><dt>${fact.name}</dt><dd>${fact.value}</dd></div>
</#list>
</dl>
</#if>
</#macro>
<#macro ref it><#if it.anchor??><a class="alone" href="#${it.anchor}">${it.text}</a><#else>${it.text}</#if></#macro>
<#macro links rows>
<ul role="list" class="choices">
<#list rows as link>
<li><a href="#${link.anchor}">${link.text}</a></li>
</#list>
</ul>
</#macro>
<#macro cables rows>
<ul role="list" class="lines">
<#list rows as line>
<li><a class="label" href="#${line.run.anchor}">${line.run.text}</a> <@chip line.state/> <span><#if line.jack??>${say("page.jack", {"jack": line.jack})}, </#if>${line.cable}</span> <a class="other" href="#${line.otherEnd.anchor}"><span class="quiet">${say("page.other-end")}</span> ${line.otherEnd.text}</a></li>
</#list>
</ul>
</#macro>
<#-- What the record says of a photograph stands beneath it; it is also what a reader who can't see it is told. -->
<#macro photos views>
<#list views as view>
<figure class="photo">
${photo(view.figure)}
<figcaption><b>${view.shown?cap_first}.</b> ${view.caption}</figcaption>
</figure>
</#list>
</#macro>
<#macro room room reduced>
<article data-view="rooms" id="${room.anchor}">
<h2>${room.name}</h2>
<p class="sub">${room.floor}</p>
<#if room.note??><p>${room.note}</p></#if>
<#if room.plan??><@figure room.plan/></#if>
<#if room.cautions?has_content>
<p>${say("page.cautions-first")}:</p>
<@links room.cautions/>
</#if>
<#if room.walls?has_content>
<details class="walls"><summary>${say("page.walls")}</summary>
<p>${say("page.walls-text")}<#if reduced> ${say("page.unfound-withheld")}</#if></p>
<#list room.walls as wall>
<h3>${wall.frame.title}</h3>
<@figure wall/>
</#list>
</details>
</#if>
<#if room.photos?has_content>
<details class="walls"><summary>${say("page.photos")}</summary>
<@photos room.photos/>
</details>
</#if>
<#list room.places as place>
<section id="${place.anchor}" class="part place">
<h3>${place.name}<#if place.label??> <span class="label">${place.label}</span></#if></h3>
<p class="sub">${place.kind}: ${place.where}</p>
<#if place.onPlan><p class="lead"><a class="alone" href="#plan/${place.anchor}">${say("page.on-plan")}</a></p></#if>
<#if place.note??><p>${place.note}</p></#if>
<@facts place.facts/>
<#if place.cables?has_content><@cables place.cables/><#else><p>${say("page.no-cable")}</p></#if>
</section>
<#else>
<p>${say("page.no-place")}</p>
</#list>
<#if room.heads?has_content>
<h3>${say("page.heads-here")}</h3>
<@links room.heads/>
</#if>
<#if room.conduits?has_content>
<h3>${say("page.conduits-here")}</h3>
<@links room.conduits/>
</#if>
</article>
</#macro>
<#macro run run>
<article data-view="cables" id="${run.anchor}">
<h2><span class="label">${run.label}</span> <@chip run.state/></h2>
<p class="sub">${run.cable}<#if run.serves??>: ${run.serves}</#if></p>
<#if run.troubles?has_content || run.standIn??>
<div class="box warning">
<#list run.troubles as trouble><p>${trouble}</p></#list>
<#if run.standIn??><p>${say("page.stands-in")} <@ref run.standIn/></p></#if>
</div>
</#if>
<#if run.why??><p>${say("page.why-dark", {"reason": run.why})}</p></#if>
<div class="ends">
<#list run.ends as end>
<section>
<h3><#if end?is_first>${say("page.end-one")}<#else>${say("page.end-other")}</#if></h3>
<p><a class="where" href="#${end.where.anchor}">${end.where.text}</a></p>
<p>${end.position}</p>
<p class="sub">${end.left}<#if end.slack??>; ${end.slack}</#if></p>
</section>
</#list>
</div>
<#if run.facts?has_content || run.conduits?has_content || run.system??>
<h3>${say("page.facts")}</h3>
<dl class="facts">
<#list run.facts as fact>
<div><dt>${fact.name}</dt><dd>${fact.value}</dd></div>
</#list>
<#if run.conduits?has_content>
<div><dt>${say("page.conduits")}</dt><dd><#list run.conduits as conduit><a href="#${conduit.anchor}">${conduit.text}</a><#sep>, </#list></dd></div>
</#if>
<#if run.system??>
<div><dt>${say("page.fact.system")}</dt><dd><a href="#${run.system.anchor}">${run.system.text}</a></dd></div>
</#if>
</dl>
</#if>
<#if run.note??><p>${run.note}</p></#if>
<h3>${say("page.tests")}</h3>
<#list run.tests as test>
<p><b class="first">${test.kind}</b>, ${test.date}: <@chip test.result/></p>
<@facts test.facts/>
<#else>
<p>${say("tested.not")}</p>
</#list>
<#if run.nothing?has_content>
<h3>${say("page.carries")}</h3>
<p>${say("page.nothing")} <@sentences run.nothing/>.</p>
</#if>
<#if run.carries?has_content>
<h3>${say("page.carries")}</h3>
<#if run.busy><p>${say("page.busy")}</p></#if>
<p class="plain">${say("page.numbers")} <a href="#notes">${say("page.notes-heading")}</a></p>
<@carries run.carries/>
</#if>
<#if run.cautions?has_content>
<h3>${say("page.cautions-first")}</h3>
<@links run.cautions/>
</#if>
</article>
</#macro>
<#macro carries rows>
<#list rows as row>
<details><summary><b>${row.service}</b> <@chip row.verdict/><#if row.brief??> <small>${row.brief}</small></#if></summary>
<p><#if row.figures??>${row.figures}. </#if><small><#list row.notes as note>${note}<#sep> </#list></small></p></details>
</#list>
</#macro>
<#macro head head>
<article data-view="heads" id="${head.anchor}">
<h2>${head.name}</h2>
<p class="sub">${head.kind}; ${head.where}</p>
<p class="lead"><a class="alone" href="#${head.room.anchor}">${say("page.to-room", {"room": head.room.text})}</a></p>
<#if head.note??><p>${head.note}</p></#if>
<#if head.panels?size gt 1>
<div class="jump">
<h3>${say("page.panels-here")}</h3>
<ul role="list" class="choices">
<#list head.panels as panel>
<li><a href="#${panel.anchor}">${panel.name}</a></li>
</#list>
</ul>
</div>
</#if>
<@photos head.photos/>
<#list head.panels as panel>
<section id="${panel.anchor}" class="part panel">
<h3>${panel.name}</h3>
<p class="sub">${panel.kind}<#if panel.rackUnit??>, ${panel.rackUnit}</#if></p>
<#if panel.note??><p>${panel.note}</p></#if>
<#list panel.rows as row>
<ul role="list" class="ports">
<#list row as port>
<li id="${port.anchor}" class="port part"><span class="number">${port.number}</span><#if port.run??> <a class="label" href="#${port.run.anchor}">${port.run.text}</a></#if> <@chip port.state/><#if port.otherEnd??> <a class="other" href="#${port.otherEnd.anchor}">${port.otherEnd.text}</a></#if></li>
</#list>
</ul>
</#list>
</section>
</#list>
<#if head.loose?has_content>
<h3>${say("page.loose")}</h3>
<@cables head.loose/>
</#if>
</article>
</#macro>
<#macro conduit conduit>
<article data-view="conduits" id="${conduit.anchor}">
<h2><span class="label">${conduit.label}</span> <@chip conduit.state/></h2>
<p class="sub">${conduit.name}</p>
<div class="ends">
<#list conduit.ends as end>
<section>
<h3><#if end?is_first>${say("page.end-one")}<#else>${say("page.end-other")}</#if></h3>
<p><@ref end/></p>
</section>
</#list>
</div>
<@facts conduit.facts/>
<#if conduit.note??><p>${conduit.note}</p></#if>
<h3>${say("page.contents")}</h3>
<#if conduit.contents?has_content><@links conduit.contents/><#elseif !conduit.withheld??><p>${say("page.contents-none")}</p></#if>
<#if conduit.withheld??><p>${conduit.withheld}</p></#if>
<#if conduit.carries?has_content>
<h3>${say("page.conduit-carries")}</h3>
<p class="plain">${say("page.numbers")} <a href="#notes">${say("page.notes-heading")}</a></p>
<@carries conduit.carries/>
</#if>
<h3>${say("page.cautions-first")}</h3>
<ul role="list" class="choices">
<li><a href="#caution/conduits">${say("caution.conduits.heading")}</a></li>
<li><a href="#caution/firestop">${say("caution.firestop.heading")}</a></li>
</ul>
</article>
</#macro>
<#macro system system>
<article data-view="systems" id="${system.anchor}">
<h2>${system.name}</h2>
<p class="sub">${system.kind}</p>
<#if system.works??><p><b>${say("page.works-today")}</b> ${system.works}</p></#if>
<#if system.later??><p><b>${say("page.left-for-later")}</b> ${system.later}</p></#if>
<#if system.demonstrated??><p>${system.demonstrated}</p></#if>
<#if system.note??><p>${system.note}</p></#if>
<#if system.cables?has_content>
<h3>${say("page.cables-heading")}</h3>
<ul role="list" class="tags">
<#list system.cables as cable>
<li><a href="#${cable.run.anchor}">${cable.run.text}</a> <@chip cable.state/></li>
</#list>
</ul>
</#if>
</article>
</#macro>
<#macro service service>
<article data-view="services" id="${service.anchor}">
<h2>${service.name}</h2>
<#if service.wishes?has_content><p>${say("page.towards", {"wishes": service.wishes?join(", ")})}</p></#if>
<p>${say("page.carriers-text")}</p>
<#if service.waiting?has_content>
<h3>${say("page.carriers-waiting")}</h3>
<@carriers service.waiting/>
</#if>
<#if service.busy?has_content>
<h3>${say("page.carriers-busy")}</h3>
<@carriers service.busy/>
</#if>
</article>
</#macro>
<#macro carriers rows>
<ul role="list" class="tags">
<#list rows as row>
<li><a href="#${row.run.anchor}">${row.run.text}</a><#if row.margin??> ${row.margin}</#if><#if row.verdict.key == "conditional"> <@chip row.verdict/></#if></li>
</#list>
</ul>
</#macro>
<#macro sentences rows><#list rows as row>${row}<#sep>; </#list></#macro>
