/** Everything that draws, with the chart library: one further script, which the plan itself does not need. */
export { forecastPicture } from "./subjects/births/forecastPicture.ts";
export { coverPicture } from "./subjects/kits/coverPicture.ts";
export { readyPicture, riskPicture } from "./subjects/kits/readyPicture.ts";
export { strengthPicture } from "./subjects/mixing/strengthPicture.ts";
export { failedPicture } from "./subjects/month/failedPicture.ts";
export { itemsPicture } from "./subjects/month/itemsPicture.ts";
export { needsPicture } from "./subjects/month/needsPicture.ts";
export { spanPicture } from "./subjects/month/spanPicture.ts";
export { costPicture } from "./subjects/order/costPicture.ts";
export { timelinePicture } from "./subjects/rounds/timelinePicture.ts";
export { stockPicture } from "./subjects/store/stockPicture.ts";
export { coolingPicture } from "./subjects/water/coolingPicture.ts";
export { hearthPicture } from "./subjects/water/hearthPicture.ts";
export { weeksPicture } from "./subjects/week/weeksPicture.ts";
