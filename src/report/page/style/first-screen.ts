/** The first screen and the first printed side. */
export const FIRST_SCREEN_STYLE = `
.first h2{margin:.5rem 0 .2rem;padding-top:.2rem;font-size:var(--s3);text-transform:uppercase;letter-spacing:.03em}
.first{display:grid;grid-template-columns:minmax(0,1.62fr) minmax(0,1fr);gap:0 1.6rem;margin-top:.4rem}
.first ul{margin:.1rem 0;padding-left:0;list-style:none}
.first li{margin:.12rem 0;line-height:1.3}
.first p{margin:.15rem 0;line-height:1.3}
.mix{table-layout:fixed}
.mix th,.mix td{padding:.16rem .2rem;border:1px solid var(--grid);text-align:center;vertical-align:middle;max-width:none}
.mix thead th{font-size:var(--s5);line-height:1.15;border-bottom:2px solid var(--ink);overflow-wrap:break-word}
.mix thead th .side{display:block;font-weight:400;color:var(--soft)}
.mix tbody th{text-align:left;white-space:nowrap;font-size:var(--s3)}
.mix .where{width:10.6rem}
.mix td{font-size:var(--s3);font-variant-numeric:tabular-nums}
.mix td.most{font-weight:700;font-size:var(--s2);line-height:1}
.mix .zone td{text-align:left;font-size:var(--s4)}
.different li{display:grid;grid-template-columns:minmax(0,1fr) auto;gap:0 .6rem}
.different .draw{grid-column:1/-1;max-height:1.1rem}
@media screen and (max-width:62rem){.first{grid-template-columns:1fr}}
@media screen and (max-width:40rem){
.mix,.mix tbody,.mix tr,.mix th,.mix td{display:block;border:0;padding:0;text-align:left;width:auto}
.mix thead{display:none}
.mix tbody tr{border-bottom:1px solid var(--rule);padding:.3rem 0}
.mix td:empty{display:none}
.mix tbody th{white-space:normal;overflow-wrap:anywhere}
.mix td,.mix td.most{display:inline-block;max-width:100%;overflow-wrap:anywhere;font-size:var(--s4);background:none;margin-right:.9rem;line-height:1.4}
.mix td::before{content:attr(data-label) " "}}
`;
