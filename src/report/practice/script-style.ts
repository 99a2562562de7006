import { INK, inkVariables } from '../page/ink.ts';

/** Style of the practice script: black on white, letter upright, cards six to a page. */
export const SCRIPT_STYLE = `
:root{color-scheme:light;${inkVariables(INK.light)}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:11pt/1.3 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:break-word}
main{max-width:7.6in;margin:0 auto;padding:.2in}
h1{font-size:18pt;margin:0}
h2{font-size:13pt;margin:.22in 0 .06in;border-bottom:2pt solid var(--ink);break-after:avoid}
h3{font-size:12pt;margin:.14in 0 .04in;break-after:avoid}
p,ul{margin:.05in 0}
ul{padding-left:.2in}
.meta,.source,.small{color:var(--soft);font-size:9.5pt}
.invented{display:inline-block}
.invented,.short{border:1.5pt dashed var(--ink);padding:.05in .1in;font-weight:700}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;font-size:9.5pt;line-height:1.15}
caption{text-align:left;font-weight:700;padding:.04in 0}
th,td{text-align:left;vertical-align:top;padding:.03in .07in .03in 0;border-bottom:.75pt solid var(--grid)}
thead th{border-bottom:1.5pt solid var(--ink)}
.none{font-style:italic}
.cards{display:grid;grid-template-columns:1fr 1fr;gap:.16in}
.card{border:1.25pt solid var(--ink);padding:.08in .1in;break-inside:avoid}
.card h3{margin:0 0 .03in;display:flex;gap:.1in;align-items:baseline}
.number{font-size:17pt}
.look{display:block;width:100%;height:1.3in}
.look path,.look rect,.look circle{fill:var(--paper);stroke:var(--ink);stroke-width:1.6}
.look .s{stroke:var(--rule);stroke-width:1.2}
.look .q,.look .tip{fill:var(--ink)}
.look .tip{stroke:none}
.look .motion,.look .job,.look .ball{fill:none}
.look .motion{stroke-dasharray:5 4}
.look .job{stroke-width:1.2}
.look .ball{stroke-width:3}
@media screen and (max-width:40rem){.cards{grid-template-columns:1fr}[id^=period]{min-width:40rem}}
@page{size:letter;margin:.45in}
@media print{main{max-width:none;padding:0}thead{display:table-header-group}table{font-size:8.5pt}th,td{padding:.02in .06in .02in 0}thead{break-after:avoid}[id^=period] td:nth-child(-n+5){white-space:nowrap}[id^=period] td:nth-child(7){width:1.1in}[id^=period] td:nth-child(8){width:2.3in}caption,tbody tr:first-child,tbody tr:last-child{break-before:avoid}tr{break-inside:avoid}.scroll{overflow:visible}.sheet{break-before:page}}
`;
