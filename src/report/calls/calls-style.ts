import { FIELD_STYLE } from '../field/field-style.ts';
import { INK, inkVariables } from '../page/ink.ts';

/** Style of the page of calls: two drawings a row on paper, ink alone. */
export const CALLS_STYLE = `
:root{color-scheme:light;${inkVariables(INK.light)}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.4 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:anywhere}
main{max-width:76rem;margin:0 auto;padding:1rem}
h1{font-size:1.8rem;margin:.2rem 0}
h2{font-size:1.3rem;margin:1.8rem 0 .6rem;border-top:3px solid var(--ink);padding-top:.3rem}
h3{font-size:1.1rem;margin:0}
p{margin:.25rem 0}
.kind,.small{font-size:.9rem}
.open{border:2px solid var(--ink);padding:.2rem .4rem}
.cards{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(27rem,100%),1fr));gap:1.4rem}
.asks{columns:2;column-gap:1.2rem;margin:.3rem 0;padding:0;list-style:none;font-size:.9rem;line-height:1.3}
.asks li{break-inside:avoid}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:.95rem}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{text-align:left;vertical-align:top;padding:.25rem .6rem .25rem 0;border-bottom:1px solid var(--grid)}
thead th{border-bottom:2px solid var(--ink)}
.n{font-variant-numeric:tabular-nums}
${FIELD_STYLE}
@page{size:letter portrait;margin:.45in}
@media print{
body{font-size:9pt;line-height:1.25}
main{max-width:none;padding:0}
h2,h3,caption{break-after:avoid}
.cards{grid-template-columns:1fr 1fr;gap:.18in .25in}
.card,tr{break-inside:avoid}
.kind,.small,.asks{font-size:8pt;line-height:1.2}
table{font-size:8.5pt}
.scroll{overflow:visible}
}
`;
