import { planCommand } from "./planCommand.ts";
import { todayHere } from "./todayHere.ts";

process.exitCode = await planCommand(process.argv.slice(2), console, todayHere());
