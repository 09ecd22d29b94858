/** Where a table has less room than this, every row stands as a short list under its name. */
const stacked = (kind: 'few' | 'many', roomRem: number): string => `@container (max-width:${roomRem}rem){
.${kind} thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.${kind},.${kind} tbody,.${kind} tr,.${kind} caption{display:block}
.${kind} tr{border-bottom:1px solid var(--ink);padding:.4rem 0}
.${kind} th,.${kind} td{display:flow-root;border:0;padding:.1rem 0 .1rem 8.5rem;text-align:left;white-space:normal}
.${kind} th{padding-left:0;font-weight:600}
.${kind} td::before{content:attr(data-head);color:var(--soft);float:left;width:8rem;margin-left:-8.5rem}
.${kind} td:empty{display:none}
.${kind} td.blank-cell{display:flow-root;border-bottom:1px solid var(--rule);min-height:1.8rem}
}`;

/** Result page, tables, figures, lists. */
export const pageCss = `
.headline{font-size:clamp(1.3rem,1rem + 1.6vw,1.9rem);line-height:1.3;margin:.3rem 0 .8rem;text-wrap:pretty}
.answer{display:grid;grid-template-columns:minmax(0,1fr);gap:0 2.2rem;grid-template-areas:"say" "plans" "body"}
.answer>.say{grid-area:say}
.answer>.plans{grid-area:plans}
.answer>.body{grid-area:body}
.plans{min-width:0}
.pair{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(22rem,100%),1fr));gap:.8rem}
figure{margin:0}
figcaption{font:.9rem/1.4 var(--sans);margin:.2rem 0 .6rem}
figcaption b{font-weight:700}
figcaption a{margin-left:.6rem}
.sheet{background:var(--sheet);border:1px solid var(--rule)}
.wide{overflow-x:auto}
.wide .drawing{min-width:44rem;max-width:70rem}
.plans .drawing{max-height:72vh}
.difference{border-left:3px solid var(--ink);padding:.1rem 0 .1rem .8rem}
.jump ul{display:flex;flex-wrap:wrap;gap:.15rem 1rem;list-style:none;margin:.8rem 0 0;padding:0;font:.85rem/1.6 var(--sans)}
@media (min-width:64rem){
.answer{grid-template-columns:minmax(0,6fr) minmax(0,5fr);grid-template-areas:"say plans" "body plans";grid-template-rows:auto 1fr}
.plans>.stay{position:sticky;top:.5rem}
.plans .pair{grid-template-columns:minmax(0,1fr)}
.plans .drawing{max-height:42vh}
.plans .tall{grid-template-columns:1fr 1fr}
.plans .tall .drawing{max-height:84vh}
}
@media (min-width:92rem){
.answer{grid-template-columns:minmax(0,5fr) minmax(0,7fr)}
.plans .pair{grid-template-columns:1fr 1fr}
.plans .drawing{max-height:80vh}
}
@media (max-width:63.99rem){
.plans>.stay{background:var(--paper)}
}
@media (max-width:40rem){
.plans{position:sticky;top:0;z-index:3;background:var(--paper);border-bottom:1px solid var(--ink);margin:0 calc(-1*clamp(.8rem,3vw,2rem));padding:.3rem .8rem 0}
.plans .pair{display:flex;overflow-x:auto;scroll-snap-type:x mandatory;gap:.6rem}
.plans .pair figure{flex:0 0 90%;scroll-snap-align:start}
.plans .drawing{max-height:38vh}
.plans .tall .drawing{max-height:52vh}
.plans figcaption{margin-bottom:.2rem}
}
main,.body{container-type:inline-size}
table{border-collapse:collapse;width:100%;font:.9rem/1.4 var(--sans);margin:.5rem 0 1rem}
caption{text-align:left;font:600 .95rem/1.4 var(--serif);padding:.2rem 0}
th,td{text-align:left;vertical-align:top;padding:.35rem .6rem .35rem 0;border-bottom:1px solid var(--rule);font-weight:400}
thead th{font-size:.78rem;color:var(--soft);border-bottom:1px solid var(--ink);vertical-align:bottom}
tbody th{font-weight:500}
.figure{text-align:right;white-space:nowrap}
tr[data-place]:hover{background:var(--grey-0)}
tr.chosen{background:var(--grey-0)}
.blank-cell{min-width:4.5rem;border-bottom:1px solid var(--ink)}
.why{display:block;color:var(--soft);font-weight:400}
.photos{display:flex;flex-wrap:wrap;gap:.4rem;margin-top:.3rem}
.photos img{display:block;height:6rem;width:auto;max-width:9rem;object-fit:cover;border:1px solid var(--rule)}
cite.why{font-style:italic;font-size:.92em}
.line{display:block}
.ladder{max-width:38rem}
.draft-note,.planned-note{border-left:3px solid var(--stop);padding:.2rem 0 .2rem .8rem}
.planned-note{border-left-color:currentColor}
${stacked('few', 30)}
${stacked('many', 52)}
.limits{list-style:none;padding:0}
.limits li{padding:.15rem 0;border-bottom:1px solid var(--rule)}
.findings{list-style:none;padding:0}
.findings li{border-left:3px solid var(--rule);padding:.2rem 0 .2rem .8rem;margin:.5rem 0}
.findings .is-stop{border-left-color:var(--stop)}
.findings .is-fix{border-left-color:var(--ink)}
.findings b{display:inline}
.cautions{padding:0;list-style:none}
.cautions{columns:26rem;column-gap:2.2rem}
.cautions li{break-inside:avoid;margin:0 0 .6rem;padding-left:.8rem;border-left:2px solid var(--rule)}
.cautions .grave{border-left:4px solid var(--ink)}
.terms{display:grid;grid-template-columns:minmax(8rem,auto) minmax(0,1fr);gap:.15rem 1rem;font-family:var(--sans);font-size:.9rem}
.terms dt{color:var(--soft)}
.terms dd{margin:0}
.key{display:flex;flex-wrap:wrap;gap:.4rem 1rem;list-style:none;padding:0;font:.85rem/1.4 var(--sans)}
.key svg{width:1.6rem;height:1.1rem;display:inline-block;vertical-align:-.2rem;margin-right:.35rem;border:1px solid var(--soft)}
.steps{padding-left:1.6rem}
.steps>li{margin:.8rem 0}
.steps .hold{font:700 .8rem/1.3 var(--sans);border:2px solid var(--ink);padding:.05rem .4rem;margin-right:.4rem}
.reading{width:6.5rem}
.ways{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(18rem,100%),1fr));gap:0 2.2rem}
.title-block.written{margin:0 0 1rem}
.title-block.written .blank{min-height:2.2em}
.owner{font-size:1.12rem;max-width:46rem}
.owner .pair{max-width:none}
.owner.columns{max-width:none;columns:30rem 2;column-gap:2.6rem}
.owner.columns section{break-inside:avoid-column}
.owner.columns h2{font-size:1.15rem;margin-top:1.2rem}
.owner.columns section:first-child h2{margin-top:0}
.three{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(15rem,100%),1fr));gap:0 2.2rem;margin:.5rem 0 1.2rem}
.three>div{border-top:3px solid var(--ink);padding:.4rem 0 .8rem}
.three dt{font:600 .9rem/1.4 var(--sans)}
.three dd{margin:.2rem 0 0;font-size:1.2rem;line-height:1.3}
.three dd .label{display:inline-block;min-width:5rem}
.origin{color:var(--soft);font-family:var(--sans)}
.origin a{display:inline;padding:.8rem .25rem .8rem .05rem;margin:0}
.origins{font:.85rem/1.4 var(--sans);margin-top:1.5rem;border-top:1px solid var(--ink)}
.origins ol{columns:26rem;column-gap:2.2rem}
.origins li{break-inside:avoid}
.origins li:target{background:var(--grey-0)}
.kitchen-plans .drawing{max-height:34vh}
.kitchen{table-layout:fixed}
.kitchen thead th:first-child{width:15rem}
.kitchen .blank-cell{height:2.2rem}
`;

/** Every page prints as a sheet. */
export const printCss = `
@page{margin:14mm 12mm 16mm;@bottom-right{content:"page " counter(page) " of " counter(pages);font:9pt sans-serif}}
@media print{
:root{--paper:#fff;--sheet:#fff;font-size:10pt}
.head nav,.jump,.head label,.skip,.screen,figcaption a,button:not(.place-name){display:none!important}
.place-name{text-decoration:none}
.head{border:0;padding:0 0 2mm}
main{padding:0;max-width:none}
.answer{display:block}
.plans,.plans>.stay{position:static}
.pair{grid-template-columns:1fr 1fr}
.survey-plan .drawing{max-height:190mm}
.kitchen-plans .drawing{max-height:58mm}
.origin,.origins{display:none}
.owner{font-size:1rem}
.owner.columns{columns:2;column-gap:8mm}
.owner.columns h2{margin-top:3mm}
.three{grid-template-columns:repeat(3,1fr);gap:0 6mm}
.plans .drawing,.wide .drawing{max-height:none;min-width:0;max-width:100%}
.wide{overflow:visible}
h2{break-after:avoid}
figure,tr,li,.title-block{break-inside:avoid}
thead{display:table-header-group}
details>summary{list-style:none}
a{text-decoration:none}
.sheet-break{break-before:page}
.title-block{margin:6mm 0 0}
.invented{padding:1mm 0}
}
`;
