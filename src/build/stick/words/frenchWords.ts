import type { StickWords } from "../stickWords.ts";

export const frenchWords: StickWords = {
	openFile: "Ouvrir Basinbook.html",
	readMeFile: "LISEZ-MOI.txt",
	demoFile: "classeur exemple.zip",
	megabytes: "\u00a0Mo",
	opening: "Ouverture de Basinbook…",
	openLink: "Ouvrir le classeur",
	stuck:
		"Si le classeur ne s’ouvre pas, ce fichier n’est pas à côté de son dossier « program ». Sortez d’abord tout le dossier « Basinbook » du zip (sous Windows : clic droit sur le zip, Extraire tout), puis ouvrez ce fichier dans ce dossier.",
	readMe: (version, size, button) => `Basinbook ${version}, à emporter sur une clé USB

1. Si vous l’avez reçu sous forme de zip, sortez-en d’abord tout le dossier.
   Sous Windows : clic droit sur le zip, Extraire tout.
2. Double-cliquez sur « Ouvrir Basinbook.html ». Il faut un navigateur web et
   rien d’autre : ni réseau, ni installation. Gardez ensemble tous les fichiers
   de ce dossier.
3. « classeur exemple.zip » est le classeur d’une unité inventée, pour essayer.
   Ouvrez-le dans Basinbook avec le bouton « ${button("Open files")} ».
   Ne le décompressez pas.

Votre travail n’est pas sur cette clé tant que vous ne l’y mettez pas. Le
navigateur garde un brouillon sur l’ordinateur que vous utilisez. Appuyez sur
« ${button("Save workbook")} », puis copiez le fichier des téléchargements dans ce
dossier. Rouvrez-le avec « ${button("Open files")} ».

Ce dossier occupe ${size.folder}, son zip ${size.zip}.

Basinbook est une aide à la planification, pas un procédé validé. Le protocole
national, les instructions du fabricant et le jugement du personnel
qualifié priment. Le chlore ne rencontre jamais le vinaigre, un autre acide ou
l’ammoniaque.

Licences du programme et de ses parties : LICENCES.txt
`,
};
