import { mergeCommand } from "./mergeCommand.ts";

process.exitCode = await mergeCommand(process.argv.slice(2), console);
