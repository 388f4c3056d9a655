<#--
  The offline page. Everything is here as plain HTML, so that it can be read without the script; the
  script shows one part at a time and searches. A part that can be shown alone has data-view, the
  name of its entry in the navigation; its id is what an address names after the #.
-->
<#import "pieces.ftl" as p>
<!DOCTYPE html>
<html lang="${facts.language}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<meta name="robots" content="noindex">
<meta name="seal" content="${seal}">
<meta name="format-detection" content="telephone=no">
<meta name="description" content="${say("page.purpose")}">
<title>${view.title}</title>
<link rel="icon" href="data:,">
${style}
${script}
</head>
<body>
<#compress>
<a class="skip" href="#main">${say("page.skip")}</a>
<header class="name">
<h1><a href="#start">${view.title}</a></h1>
<p>${say("theme.revision")} ${facts.revision}, ${facts.issued}<#if view.address??> · ${view.address}</#if></p>
</header>
<form role="search" class="needs-script" id="search">
<label for="query">${say("page.search")}</label>
<div class="field">
<input type="search" id="query" autocomplete="off" autocapitalize="off" autocorrect="off" spellcheck="false" enterkeyhint="search"<#if view.example??> aria-describedby="hint"</#if>>
<button type="button" id="clear" hidden>${say("page.search-clear")}</button>
</div>
<#if view.example??><p id="hint">${say("page.search-hint", {"typed": view.example.typed, "label": view.example.label})}</p></#if>
</form>
<nav aria-label="${say("page.nav")}">
<ul>
<li><a href="#start" data-part="rooms">${say("page.rooms")}</a></li>
<li><a href="#cables" data-part="cables">${say("page.cables-heading")}</a></li>
<li><a href="#heads" data-part="heads">${say("page.heads")}</a></li>
<#if view.conduits?has_content><li><a href="#conduits" data-part="conduits">${say("page.conduits")}</a></li></#if>
<#if view.systems?has_content><li><a href="#systems" data-part="systems">${say("page.systems")}</a></li></#if>
<#if view.services?has_content><li><a href="#services" data-part="services">${say("page.services")}</a></li></#if>
<li><a href="#contacts" data-part="contacts">${say("page.contacts")}</a></li>
<li><a href="#cautions" data-part="cautions">${say("page.cautions")}</a></li>
<li><a href="#about" data-part="about">${say("page.about")}</a></li>
</ul>
</nav>
<p role="status" class="count needs-script" id="count" data-none="${say("page.found-none")}" data-one="${say("page.found.one", {"count": "{count}"})}" data-other="${say("page.found.other", {"count": "{count}"})}" data-near="${say("page.found-near")}" data-first="${say("page.found-first", {"count": "{count}", "shown": "{shown}"})}"></p>
<main id="main" tabindex="-1">
<section data-view="found" id="found" class="needs-script">
<h2 class="unseen">${say("page.found-heading")}</h2>
<ul role="list" id="hits"></ul>
<p id="unfound" hidden>${say("page.unfound")}<#if view.copy == "REDUCED"> ${say("page.unfound-withheld")}</#if></p>
</section>

<section data-view="rooms" id="start">
<h2>${say("page.rooms-heading")}</h2>
<#if facts.invented><p class="box">${say("theme.invented")}.</p></#if>
<#if view.copy == "REDUCED"><p class="box">${say("page.copy-reduced")}</p></#if>
<#if view.copy == "OWNERS"><p class="box warning">${say("page.copy-owners")}</p></#if>
<p>${say("page.start")}</p>
<#list view.floors as floor>
<h3>${floor.name}</h3>
<#if floor.plan??><@p.figure floor.plan/></#if>
<ul role="list" class="choices">
<#list floor.rooms as room>
<li><a href="#${room.anchor}">${room.text}</a></li>
</#list>
</ul>
</#list>
<#if view.grounds??>
<h3>${say("page.grounds")}</h3>
<p>${say("page.grounds-text")}</p>
<@p.figure view.grounds/>
</#if>
</section>

<#list view.rooms as room><@p.room room view.copy == "REDUCED"/></#list>

<section data-view="cables" id="cables">
<h2>${say("page.cables-heading")}</h2>
<p>${say("page.cables-text")}</p>
<ul role="list" class="lines">
<#list view.runs as run>
<li><a class="label" href="#${run.anchor}">${run.label}</a> <@p.chip run.state/> <span>${run.ends[0].where.text} ↔ ${run.ends[1].where.text}</span></li>
</#list>
</ul>
</section>
<#list view.runs as run><@p.run run/></#list>

<section data-view="heads" id="heads">
<h2>${say("page.heads-heading")}</h2>
<p>${say("page.heads-text")}</p>
<ul role="list" class="lines">
<#list view.heads as head>
<li><a href="#${head.anchor}">${head.name}</a> <span>${head.kind}; ${head.where}</span></li>
</#list>
</ul>
</section>
<#list view.heads as head><@p.head head/></#list>

<#if view.conduits?has_content>
<section data-view="conduits" id="conduits">
<h2>${say("page.conduits-heading")}</h2>
<p>${say("page.conduits-text")}</p>
<ul role="list" class="lines">
<#list view.conduits as conduit>
<li><a class="label" href="#${conduit.anchor}">${conduit.label}</a> <@p.chip conduit.state/> <span>${conduit.name}</span></li>
</#list>
</ul>
</section>
<#list view.conduits as conduit><@p.conduit conduit/></#list>
</#if>

<#if view.systems?has_content>
<section data-view="systems" id="systems">
<h2>${say("page.systems-heading")}</h2>
<p>${say("page.systems-text")}</p>
<ul role="list" class="choices">
<#list view.systems as system>
<li><a href="#${system.anchor}">${system.name}</a></li>
</#list>
</ul>
</section>
<#list view.systems as system><@p.system system/></#list>
</#if>

<#if view.services?has_content>
<section data-view="services" id="services">
<h2>${say("page.services-heading")}</h2>
<p>${say("page.services-text")}</p>
<ul role="list" class="choices">
<#list view.services as service>
<li><a href="#${service.anchor}">${service.name}</a></li>
</#list>
</ul>
</section>
<#list view.services as service><@p.service service/></#list>
</#if>

<section data-view="contacts" id="contacts">
<h2>${say("page.contacts-heading")}</h2>
<#if view.contacts?has_content>
<p>${say("page.contacts-text")}</p>
<ul role="list" class="lines">
<#list view.contacts as contact>
<li><b>${contact.role}</b> <span>${contact.name}</span><#if contact.dial??> <a href="tel:${contact.dial}">${contact.phone}</a></#if><#if contact.email??> <span>${contact.email}</span></#if></li>
</#list>
</ul>
<#else>
<p>${say("page.contacts-none")}</p>
</#if>
</section>

<section data-view="cautions" id="cautions">
<h2>${say("page.cautions-heading")}</h2>
<#if view.jurisdiction??><p>${say("page.jurisdiction", {"authority": view.jurisdiction})}</p></#if>
<#if view.codes?has_content>
<p>${say("page.codes")}</p>
<ul><#list view.codes as code><li>${code}</li></#list></ul>
</#if>
<#list view.cautions as caution>
<section id="${caution.anchor}" class="part">
<h3>${caution.caution.heading}</h3>
<p>${caution.caution.text}</p>
</section>
</#list>
</section>

<section data-view="about" id="about">
<h2>${say("page.about-heading")}</h2>
<p>${say("page.about-text")}</p>
<#if view.copy == "REDUCED"><p>${say("page.copy-reduced")}</p></#if>
<p><a id="record" class="alone" download="job.yaml" href="${recordData}" data-sha256="${recordDigest}"><#if view.copy == "OWNERS">${say("page.record")}<#else>${say("page.record-extract")}</#if></a></p>
<p>${say("page.record-text")}</p>
<#if view.photosLeftOut??><p>${view.photosLeftOut}</p></#if>
<h3>${say("page.signs")}</h3>
<ul role="list" class="signs">
<#list ["works", "dark", "unfinished", "dead", "retired"] as state>
<li><i class="${state}">${say("run-state." + state)}</i> <span>${say("page.sign." + state)}</span></li>
</#list>
</ul>
<#if view.symbols??>
<h3>${say("page.symbols")}</h3>
<@p.figure view.symbols/>
</#if>
<#if view.notes?has_content>
<h3 id="notes">${say("page.notes-heading")}</h3>
<p>${say("page.notes-text")}</p>
<#list ["limited-by", "missing", "conditions", "assumptions", "adds", "by", "source"] as term>
<#list view.notes?filter(n -> n.term == term)>
<h4>${say("page.note." + term)}</h4>
<ul role="list" data-term="${say("page.note." + term)}">
<#items as note>
<li id="note/${note.number}"><b>${note.number}</b> ${note.text}</li>
</#items>
</ul>
</#list>
</#list>
</#if>
</section>
</main>
<p class="needs-script"><button type="button" id="print">${say("page.print")}</button></p>
<footer>
<p>${view.title}, ${say("theme.revision")} ${facts.revision}, ${facts.issued}.<#if facts.invented> ${say("theme.invented")}.</#if> ${say("page.foot")}</p>
</footer>
</#compress>

${data}
</body>
</html>
