import { checksSheet } from "../../../core/sheets/checks.ts";
import type { SheetPage } from "../../page.ts";
import { readinessCautions } from "./readinessCautions.ts";

/** Where readiness checks are written down. */
export const checksPage: SheetPage = {
	sheet: checksSheet,
	cautions: readinessCautions,
};
