import type { Language } from "../../messages/languages.ts";
import type { StickWords } from "./stickWords.ts";

/** Where the program lies, from the file that is double-clicked. */
export const PROGRAM = "program";

/**
 * The page that is double-clicked. A script in the program's folder leads on from it;
 * where that folder is missing, as inside a zip that was not unpacked, the page stays
 * and says what to do.
 */
export function openPage(language: Language, words: StickWords, site: string): string {
	return `<!doctype html>
<html lang="${language}">
	<head>
		<meta charset="utf-8" />
		<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; style-src 'self'; base-uri 'none'; form-action 'none'" />
		<meta name="viewport" content="width=device-width, initial-scale=1" />
		<meta name="color-scheme" content="light dark" />
		<title>Basinbook</title>
		<link rel="stylesheet" href="./${PROGRAM}/workbook.css" />
		<script defer src="./${PROGRAM}/goOn.js"></script>
	</head>
	<body>
		<main class="reading">
			<h1>${words.opening}</h1>
			<p><a id="go-on" href="./${PROGRAM}/${site}index.html">${words.openLink}</a></p>
			<p>${words.stuck}</p>
		</main>
	</body>
</html>
`;
}

/** The script that leads on: to where the page's own link goes. */
export const goOnScript = `location.replace(document.getElementById("go-on").href);\n`;
