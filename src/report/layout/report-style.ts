import { FIELD_STYLE } from '../field/field-style.ts';
import { INK, inkVariables } from '../page/ink.ts';
import { FIRST_SCREEN_STYLE } from '../page/style/first-screen.ts';
import { MARK_STYLE } from '../page/style/marks.ts';
import { PRINT_STYLE } from '../page/style/print.ts';

/** The five type sizes of the report, largest first. */
const TYPE = '--s1:1.75rem;--s2:1.3rem;--s3:1.05rem;--s4:.95rem;--s5:.82rem';

/** The style of the report on screen and on paper. */
export const REPORT_STYLE = `
:root{color-scheme:light dark;${TYPE};${inkVariables(INK.light)}}
@media screen and (prefers-color-scheme:dark){:root:not([data-theme=light]){color-scheme:dark;${inkVariables(INK.dark)}}}
@media screen{:root[data-theme=dark]{color-scheme:dark;${inkVariables(INK.dark)}}:root[data-theme=light]{color-scheme:light}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:var(--s4)/1.42 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:anywhere}
main,header.top,.bar,footer{max-width:80rem;margin:0 auto;padding:0 1rem}
h1{font-size:var(--s1);line-height:1.15;margin:0}
h2{font-size:var(--s2);margin:2.2rem 0 .6rem;padding-top:.4rem;border-top:3px solid var(--accent)}
h3{font-size:var(--s3);margin:1.3rem 0 .4rem}

p,li,dd{max-width:50rem}
a{color:inherit}
h2 a{text-decoration:none}
h2 a:hover{text-decoration:underline}
:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
:target>h2,h3:target{text-decoration:underline;text-decoration-thickness:3px}
.skip{position:absolute;left:-99rem}
.skip:focus{left:1rem;top:.5rem;background:var(--paper);padding:.6rem;z-index:9}
header.top{display:flex;flex-wrap:wrap;gap:0 1.2rem;align-items:baseline;justify-content:space-between;padding-top:.6rem}
.meta,.small{color:var(--soft);font-size:var(--s5)}
.meta{margin:.2rem 0}
.invented{border:1px dashed var(--ink);padding:0 .4rem;font-weight:700;color:var(--ink)}
.none{color:var(--soft);font-style:italic}
.verdict{font-weight:700}
.bar{display:flex;flex-wrap:wrap;gap:0 1rem;align-items:center;justify-content:space-between;border-top:1px solid var(--rule);margin-top:1.2rem}
.bar ul{display:flex;flex-wrap:wrap;gap:0 .2rem;list-style:none;margin:0;padding:0}
.bar li a{display:block;padding:.45rem .6rem .45rem 0;text-underline-offset:.2em}
.tools{display:flex;flex-wrap:wrap;gap:.4rem .6rem;align-items:center}
button,select,input{font:inherit;color:inherit;background:var(--paper);border:1px solid var(--rule);border-radius:0;min-height:2.2rem;padding:.1rem .6rem}
input[type=range]{padding:0;border:0;min-width:10rem;accent-color:var(--accent)}
.scroll{overflow-x:auto;margin:.4rem 0 1rem}
table{border-collapse:collapse;width:100%;line-height:1.3}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{text-align:left;vertical-align:top;padding:.3rem .7rem .3rem 0;border-bottom:1px solid var(--grid);overflow-wrap:break-word;max-width:26rem}
thead th{border-bottom:2px solid var(--ink);vertical-align:bottom;font-size:var(--s5)}
td.n,th.n{font-variant-numeric:tabular-nums;text-align:right;padding-right:1.2rem}
th button{border:0;padding:0;font-weight:700;text-align:inherit;text-decoration:underline;text-underline-offset:.2em;min-height:1.5rem}
tr[data-thin]>*{color:var(--soft)}
.find label,.what-if label{max-width:100%;flex-wrap:wrap}.find input,select{max-width:100%}
.find{display:flex;flex-wrap:wrap;gap:.4rem .8rem;align-items:center;margin:.4rem 0}
figure{margin:.8rem 0 1.2rem}
figcaption{color:var(--soft);font-size:var(--s5);max-width:50rem}
.finding{margin-bottom:.3rem}
.drawing svg{display:block;width:100%;max-width:34rem;height:auto}
svg text{fill:var(--ink);font-family:Arial,"Liberation Sans",Helvetica,sans-serif}
details{margin:.3rem 0}
summary{cursor:pointer;padding:.25rem 0;min-height:1.5rem}
dt{font-weight:700;margin-top:.5rem}
dd{margin:0}
@media screen{.unmatched{display:none}}
.said{position:absolute;left:-99rem}
.what-if{overflow-x:auto;border:1px solid var(--rule);padding:.2rem 1rem 1rem;margin:1rem 0}
.knobs{display:flex;flex-wrap:wrap;gap:.4rem 1.4rem;align-items:center}
.knobs label{display:flex;gap:.5rem;align-items:center}
.knobs output{min-width:3rem}
.cards{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(21rem,100%),1fr));gap:1rem 1.4rem;margin:.6rem 0}
.card h3{margin:0 0 .2rem}
.card p{margin:.15rem 0;font-size:var(--s4)}
.thirds ul,.halves ul{padding-left:1.2rem}
.thirds{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(15rem,100%),1fr));gap:0 2rem}
.halves{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(30rem,100%),1fr));gap:0 2rem}
${MARK_STYLE}${FIRST_SCREEN_STYLE}${FIELD_STYLE}footer{border-top:1px solid var(--rule);margin-top:2rem;padding-top:.5rem;padding-bottom:1.5rem;color:var(--soft);font-size:var(--s5)}
@media screen and (max-width:40rem){
.cards-on-phone thead{display:none}
.cards-on-phone tr,.cards-on-phone th,.cards-on-phone td{display:block;border:0;max-width:none;padding:.1rem 0;text-align:left}
.cards-on-phone tr{border-bottom:1px solid var(--rule);padding:.4rem 0}
.cards-on-phone td[data-label]:not(:empty)::before{content:attr(data-label) ": ";color:var(--soft)}}
${PRINT_STYLE}`;
