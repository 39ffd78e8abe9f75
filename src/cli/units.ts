import { todayHere } from "./todayHere.ts";
import { unitsCommand } from "./unitsCommand.ts";

process.exitCode = await unitsCommand(process.argv.slice(2), console, todayHere());
