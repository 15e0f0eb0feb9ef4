What trestle.jar is made of beside Trestle: ${dependencyMap?size} libraries, each with the licences that it comes under. Where there is a
choice, Trestle takes the first. Their own texts are in the jar under META-INF/licenses/.
<#list dependencyMap as entry>

${entry.getKey().groupId}:${entry.getKey().artifactId}:${entry.getKey().version}
    ${entry.getValue()?join(" or ")}
    ${entry.getKey().name}<#if entry.getKey().url??>, ${entry.getKey().url}</#if>
</#list>
