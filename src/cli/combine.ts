import { combineCommand } from "./combineCommand.ts";

process.exitCode = await combineCommand(process.argv.slice(2), console);
