import { INK, inkVariables } from '../page/ink.ts';
import { MARK_STYLE } from '../page/style/marks.ts';

/** Shared by the sheets: black on white at any hour. */
const SHEET_BASE = `
:root{color-scheme:light;${inkVariables(INK.light)}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:11.5pt/1.22 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:anywhere}
main{margin:0 auto;padding:.12in}
h1{font-size:16pt;margin:0;display:inline}
h2{font-size:12.5pt;margin:.06in 0 .03in;border-bottom:2pt solid var(--accent)}
p{margin:.03in 0}
.head{display:flex;flex-wrap:wrap;gap:0 .25in;align-items:baseline;justify-content:space-between;margin-bottom:.04in}
.invented{font-weight:700;border:1.25pt dashed var(--ink);padding:0 .06in}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;vertical-align:middle;border-bottom:.75pt solid var(--rule);padding:.012in .06in .012in 0;overflow-wrap:break-word}
thead th{border-bottom:2pt solid var(--ink);font-size:10pt}
ul{margin:.03in 0;padding-left:.18in}
li{margin:.03in 0}
.small{font-size:9pt;line-height:1.2}
.big{font-size:14pt}
.side,.count{font-weight:400;color:var(--soft)}
.said{position:absolute;left:-99rem}
${MARK_STYLE}`;

/** The call sheet: one side of letter landscape, readable at arm's length. */
export const CALL_SHEET_STYLE = `${SHEET_BASE}
main{max-width:10.4in}
.where{font-size:12.5pt;font-weight:700;white-space:nowrap;width:1.62in;padding-right:.14in}
.base{font-size:12.5pt;font-weight:700;white-space:nowrap;width:.75in}
.calls{font-size:13.5pt;line-height:1.1}
.calls>span{display:inline-block;margin-right:.1in;white-space:nowrap}
.calls .side{font-size:8.5pt}
.calls .d{border:1.25pt solid var(--ink);padding:0 .04in;font-variant-numeric:tabular-nums;background:var(--tint1);print-color-adjust:exact}
.zone td{font-size:11pt;line-height:1.1}.zone .where{font-size:10.5pt;line-height:1.1}
.fact,.zone .fact{font-size:9pt;width:2in;line-height:1.05}
.many .calls{font-size:13.5pt;line-height:1}.many .where,.many .base{font-size:11pt}.many .zone td,.many .zone .where{font-size:9.5pt}.many .fact,.many .zone .fact{font-size:8.5pt}
.looks{margin-top:.07in}
.looks th,.looks td{font-size:9pt;line-height:1.05;padding:.008in .06in .008in 0}
.looks thead th{width:.9in}
.looks .count{display:block;font-size:8pt}
.looks .point{width:3.4in;font-size:8.5pt;line-height:1}
@media screen and (max-width:50rem){.scroll{overflow-x:auto}.calls>span{white-space:normal}
.where{white-space:normal}.where,.fact,.zone .fact,.looks thead th,.looks .point{width:auto}}
@media screen and (max-width:40rem){.calls-table thead{display:none}.calls-table tr,.calls-table th,.calls-table td{display:block;border:0;padding:.01in 0;width:auto}
.calls-table tr{border-bottom:.75pt solid var(--rule);padding:.04in 0}.calls-table .where,.calls-table .base{display:inline-block;margin-right:.15in}}
@page{size:letter landscape;margin:.28in}
@media print{main{max-width:none;padding:0}tr,li{break-inside:avoid}}
`;

/** The tip sheet: one side of letter portrait, for players. */
export const TIP_SHEET_STYLE = `${SHEET_BASE}
main{max-width:7.9in}
.halves{display:grid;grid-template-columns:1fr 1fr;gap:.06in .25in}
.halves td,.halves th{font-size:10.5pt;line-height:1.15}
.keys td,.keys th{white-space:nowrap}
.keys .side{font-size:9pt}
.ours td,.ours th{font-size:10pt;line-height:1.12}
@media screen and (max-width:50rem){.keys td,.keys th{white-space:normal}}
.keys th{font-weight:700}
@media screen and (max-width:50rem){.halves{grid-template-columns:1fr}.scroll{overflow-x:auto}}
@page{size:letter portrait;margin:.35in}
@media print{main{max-width:none;padding:0}tr,li{break-inside:avoid}}
`;

/** The wristband: cards of 4.75 by 2.5 inches, to be cut out. */
export const WRISTBAND_STYLE = `${SHEET_BASE}
.bands{display:grid;grid-template-columns:repeat(2,4.75in);gap:.05in;justify-content:center}
.band{width:4.75in;height:2.45in;border:1pt dashed var(--ink);padding:.06in .1in;overflow:hidden}
.band .head{display:block;font-size:8.5pt;margin:0}
.band ol{list-style:none;margin:0;padding:0;columns:2;column-gap:.12in}
.band li{font-size:13pt;line-height:1.22;margin:0;white-space:nowrap;break-inside:avoid}
.band .side{font-size:8.5pt}
.band.many li{font-size:10pt}
@media screen and (max-width:60rem){.bands{grid-template-columns:minmax(0,4.75in)}.band{width:auto;height:auto}.band ol{columns:1}}
@page{size:letter landscape;margin:.3in}
@media print{main{padding:0}}
`;
