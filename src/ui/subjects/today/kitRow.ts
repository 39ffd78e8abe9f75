import type { ComputedRow } from "../../../core/computedTable.ts";
import type { kitRegisterSheet } from "../../../core/sheets/kitRegister.ts";

/** A kit as it stands on the day that is shown. */
export type KitRow = ComputedRow<typeof kitRegisterSheet>;
