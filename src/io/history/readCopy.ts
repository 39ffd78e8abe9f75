import type { Copy } from "../../core/merge/descent.ts";
import { migrated } from "../migrated.ts";
import type { ReadFiles } from "../readFiles.ts";
import { clearForm } from "./clearForm.ts";
import { rememberedDescent } from "./rememberedDescent.ts";

/** A copy of a workbook as its files were read, in the present edition of the format. */
export function readCopy({ workbook, history }: Pick<ReadFiles, "workbook" | "history">): Copy {
	const now = clearForm(migrated(workbook));
	return { workbook: now, descent: rememberedDescent(now, history) };
}
