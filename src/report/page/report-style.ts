import { FIELD_STYLE } from '../field/field-style.ts';
import { INK, inkVariables } from './ink.ts';

/** The style of the report on screen and on paper. */
export const REPORT_STYLE = `
:root{color-scheme:light dark;${inkVariables(INK.light)}}
@media screen and (prefers-color-scheme:dark){:root:not([data-theme=light]){color-scheme:dark;${inkVariables(INK.dark)}}}
@media screen{:root[data-theme=dark]{color-scheme:dark;${inkVariables(INK.dark)}}:root[data-theme=light]{color-scheme:light}}
*{box-sizing:border-box}
html{scroll-padding-top:7.5rem}
@media (max-width:66rem){html{scroll-padding-top:10rem}}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:anywhere}
main,header.top,footer{max-width:76rem;margin:0 auto;padding:0 1rem}
h1{font-size:2rem;line-height:1.15;margin:1.2rem 0 .3rem}
h2{font-size:1.5rem;margin:2.6rem 0 .8rem;padding-top:.5rem;border-top:3px solid var(--ink)}
h3{font-size:1.1rem;margin:1.6rem 0 .5rem}
p,li,dd{max-width:48rem}
a{color:inherit}
h2 a{text-decoration:none}
h2 a:hover{text-decoration:underline}
:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
:target>h2,h3:target{text-decoration:underline;text-decoration-thickness:3px}
.skip{position:absolute;left:-99rem}
.skip:focus{left:1rem;top:.5rem;background:var(--paper);padding:.6rem;z-index:9}
.meta{color:var(--soft);margin:.2rem 0}
.invented{border:2px dashed var(--ink);padding:.5rem .8rem;margin:1rem 0;font-weight:700}
.short{font-size:1.15rem;padding-left:1.2rem}
.short li{margin:.45rem 0}
.verdict{font-size:1.1rem;font-weight:700}
.none{color:var(--soft);font-style:italic}
.bar{position:sticky;top:0;z-index:5;background:var(--paper);border-bottom:1px solid var(--rule)}
.bar nav,.tools{max-width:76rem;margin:0 auto;padding:.2rem 1rem}
.bar ul{display:flex;flex-wrap:wrap;gap:0 .2rem;list-style:none;margin:0;padding:0}
.bar li a{display:block;padding:.55rem .5rem;text-underline-offset:.2em}
.tools{display:flex;flex-wrap:wrap;gap:.4rem 1rem;align-items:center;padding-bottom:.5rem}
.tools label{display:flex;gap:.4rem;align-items:center}
button,select,input{font:inherit;color:inherit;background:var(--paper);border:1px solid var(--rule);border-radius:0;min-height:2.6rem;padding:.2rem .6rem}
input[type=checkbox]{min-height:0;width:1.4rem;height:1.4rem}
input{accent-color:var(--ink)}
input[type=range]{padding:0;border:0;min-width:10rem}
.scroll{overflow-x:auto;margin:.6rem 0 1.2rem}
table{border-collapse:collapse;width:100%;font-size:.95rem;line-height:1.35}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--grid);min-width:4.5rem;overflow-wrap:break-word;max-width:26rem}
thead th{border-bottom:2px solid var(--ink);vertical-align:bottom}
td.n,th.n{font-variant-numeric:tabular-nums}
th button{border:0;padding:0;font-weight:700;text-align:left;text-decoration:underline;text-underline-offset:.2em;min-height:1.6rem}
tr[data-thin]>*{font-style:italic}
.find{display:flex;flex-wrap:wrap;gap:.4rem .8rem;align-items:center;margin:.4rem 0}
figure{margin:1.2rem 0 2rem}
figcaption{color:var(--soft);max-width:48rem}
.drawing svg{display:block;max-width:100%;height:auto;min-width:40rem}
svg text{fill:var(--ink);font-family:Arial,"Liberation Sans",Helvetica,sans-serif}
svg.tinted text{paint-order:stroke;stroke:var(--paper);stroke-width:3px}
details{margin:.5rem 0}
summary{cursor:pointer;padding:.4rem 0;min-height:2rem}
dt{font-weight:700;margin-top:.5rem}
dd{margin:0}
@media screen{.off,.unmatched{display:none}}
.said{position:absolute;left:-99rem}
.what-if{border:1px solid var(--rule);padding:.2rem 1rem 1rem;margin:1.2rem 0}
.what-if table{max-width:48rem}
.knobs{display:flex;flex-wrap:wrap;gap:.4rem 1.4rem;align-items:center}
.knobs label{display:flex;gap:.5rem;align-items:center}
.knobs output{min-width:3rem}
.cards{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(27rem,100%),1fr));gap:1.4rem;margin:1rem 0}
.card h4{margin:0 0 .2rem;font-size:1.05rem}
.card p{margin:.2rem 0;font-size:.95rem}
${FIELD_STYLE}footer{border-top:1px solid var(--rule);margin-top:3rem;padding-top:.6rem;padding-bottom:2rem;color:var(--soft)}
@media (max-width:40rem){h1{font-size:1.6rem}.bar{position:static}html{scroll-padding-top:0}.bar ul{flex-wrap:nowrap;overflow-x:auto}.bar li a{white-space:nowrap}
.cards-on-phone thead{display:none}
.cards-on-phone tr,.cards-on-phone th,.cards-on-phone td{display:block;border:0;max-width:none;padding:.1rem 0}
.cards-on-phone tr{border-bottom:1px solid var(--rule);padding:.5rem 0}
.cards-on-phone th{font-size:1.1rem}
.cards-on-phone td::before{content:attr(data-label) ": ";font-weight:700}}
@page{size:letter landscape;margin:.5in}
@media print{
:root{color-scheme:light;${inkVariables(INK.light)}}
body{font-size:10pt;line-height:1.35}
main,header.top,footer{max-width:none;padding:0}
.bar,.tools,.skip,.find,.what-if,summary{display:none!important}
h2{break-after:avoid;margin-top:1.4rem}
h3,caption,summary{break-after:avoid}
table{font-size:8.5pt;line-height:1.15}
details table{font-size:8pt}
th,td{padding:.05rem .5rem .05rem 0}
figure{margin:.4rem 0 1rem}
.scroll{margin:.3rem 0 .6rem}
thead{display:table-header-group;break-after:avoid}
caption,tbody tr:first-child{break-before:avoid}
tr,.drawing,.card{break-inside:avoid}
.scroll{overflow:visible}
.drawing svg{min-width:0;max-height:6.6in}
th button{display:contents}
.short{font-size:10.5pt;columns:2;column-gap:.4in}
.short li{margin:.15rem 0;break-inside:avoid}
.cards{grid-template-columns:repeat(3,1fr);gap:.25in}
.card p{font-size:8.5pt;line-height:1.25}
#glossary dl{columns:2;column-gap:.4in}
dt{break-after:avoid}
details::details-content{content-visibility:visible;height:auto}
a{text-decoration:none}
}
`;
