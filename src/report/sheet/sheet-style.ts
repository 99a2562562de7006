import { INK, inkVariables } from '../page/ink.ts';

/** Style shared by the sheets: black on white at any hour, large type, letter landscape. */
export const SHEET_STYLE = `
:root{color-scheme:light;${inkVariables(INK.light)}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:12pt/1.25 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:anywhere}
main{max-width:10.3in;margin:0 auto;padding:.15in}
h1{font-size:17pt;margin:0;display:inline}
h2{font-size:13pt;margin:0 0 .04in;border-bottom:2.5pt solid var(--ink)}
p{margin:.03in 0}
.head{display:flex;flex-wrap:wrap;gap:0 .3in;align-items:baseline;justify-content:space-between;margin-bottom:.05in}
.invented{font-weight:700;border:1.5pt dashed var(--ink);padding:.01in .08in}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;vertical-align:middle;border-bottom:.75pt solid var(--rule);padding:.025in .08in .025in 0;overflow-wrap:break-word;max-width:7in}
thead th{border-bottom:2.5pt solid var(--ink);font-size:11pt}
tr.new>*{border-top:2.5pt solid var(--ink)}
.calls{font-size:14pt;font-weight:700;line-height:1.1;width:57%}
.calls .d{font-weight:400;border:1.25pt solid var(--ink);padding:0 .05in;margin-left:.05in;white-space:nowrap}
.calls>span{display:inline-block;margin:.01in .16in .01in 0}
.fact{font-size:10.5pt;line-height:1.15}
.where{font-size:13.5pt;font-weight:700;white-space:nowrap}
.page{break-before:page;margin-top:.3in}
.thirds{display:grid;grid-template-columns:repeat(3,1fr);gap:.12in .3in;margin-top:.12in}
.halves{display:grid;grid-template-columns:1fr 1fr;gap:.12in .35in;margin-top:.1in}
ul{margin:.03in 0;padding-left:.2in}
li{margin:.035in 0}
.small{font-size:9.5pt;line-height:1.2}
.leave{font-size:10.5pt;line-height:1.15}
.leave th{width:20%}
.ours th{width:17%}
.big{font-size:14pt}
@media screen and (max-width:50rem){.thirds,.halves{grid-template-columns:1fr}.where{white-space:normal}.scroll{overflow-x:auto}}
@page{size:letter landscape;margin:.35in}
@media print{main{max-width:none;padding:0}.page{margin-top:0}thead{display:table-header-group}tr,li{break-inside:avoid}}
`;
