import { plan } from "../../src/core/plan.ts";
import { withTexts } from "../../src/ui/book/withTexts.ts";
import { yearWorkbook } from "./yearWorkbook.ts";
const wb = yearWorkbook();
const row= wb.tables["unit.csv"].rows.findIndex(([k])=>k==="plan_confidence");
const ts=[];
for (let r=0;r<Number(process.argv[2]??40);r++){ const t=performance.now(); plan(withTexts(wb,"unit.csv",[{row, column:"value", text:String(0.9+(r%97)/1000)}])); ts.push(performance.now()-t);}
ts.sort((a,b)=>a-b); console.log(ts[0].toFixed(1), ts[ts.length>>1].toFixed(1));
