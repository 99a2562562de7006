import { INK, inkVariables } from '../ink.ts';

/** On paper: letter landscape, black on white, closed parts left out. */
export const PRINT_STYLE = `
@page{size:letter landscape;margin:.45in}
@media print{
:root{color-scheme:light;--s1:17pt;--s2:12.5pt;--s3:10.5pt;--s4:9.5pt;--s5:8pt;${inkVariables(INK.light)}}
body{line-height:1.3}
main,header.top,footer{max-width:none;padding:0}
.bar,.skip,.find,.what-if,details:not([open]),details>summary{display:none!important}
details[open]::details-content{content-visibility:visible;height:auto}
h2{break-after:avoid}
h3,h4,caption{break-after:avoid}
th,td{padding:.06rem .5rem .06rem 0}
figure{margin:.3rem 0 .6rem}
figcaption{break-before:avoid}
#how-do-you-know:not(:has(details[open])){display:none}
.scroll{margin:.2rem 0 .4rem;overflow:visible}
thead{display:table-header-group;break-after:avoid}
caption,tbody tr:first-child,tbody tr:nth-child(2),tbody tr:last-child{break-before:avoid}
tr,.strip,.card,li{break-inside:avoid}
.strip{padding:0}
.strips{columns:2;column-gap:.3in;max-width:none}
.strip{grid-template-columns:1.5in 1.6in 1fr}
.strips{break-inside:avoid}
footer{margin-top:.08in;padding:.04in 0 0;font-size:7pt;line-height:1.2}
p,figcaption{margin:.15rem 0}
h2{margin:.3rem 0 .2rem}
th button{display:contents}
.first{break-after:page}
.halves{grid-template-columns:1fr 1fr}
main>ul,.thirds ul,.halves ul{margin:.1rem 0}
.cards{grid-template-columns:repeat(3,1fr);gap:.06in .25in}
.card h3{margin:0}
.card p{font-size:8pt;line-height:1.2}
.drawing svg{max-width:4in}
#glossary dl{columns:2;column-gap:.4in}
dt{break-after:avoid}
a{text-decoration:none}
}
`;
