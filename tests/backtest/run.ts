/** `npm run backtest [units | forecast]`: both where neither is named. */
const [, , which] = process.argv;
if (which !== "forecast") await import("./units/writeResults.ts");
if (which !== "units") await import("./forecastResults.ts");

export {};
