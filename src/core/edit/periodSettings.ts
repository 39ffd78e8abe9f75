/** Settings that say which days are planned, not how the unit works: what is kept or tried leaves them to the workbook. */
export const periodSettings: readonly string[] = ["plan_start", "plan_days"];
