import type { StickWords } from "../stickWords.ts";

export const portugueseWords: StickWords = {
	openFile: "Abrir Basinbook.html",
	readMeFile: "LEIA-ME.txt",
	demoFile: "livro de exemplo.zip",
	megabytes: "MB",
	opening: "A abrir o Basinbook…",
	openLink: "Abrir o livro",
	stuck:
		"Se o livro não abrir, este ficheiro não está ao lado da sua pasta “program”. Tire primeiro toda a pasta “Basinbook” do zip (no Windows: clique com o botão direito no zip, Extrair tudo) e depois abra este ficheiro nessa pasta.",
	readMe: (version, size, button) => `Basinbook ${version}, para levar numa pen USB

1. Se isto veio como zip, tire primeiro toda a pasta do zip.
   No Windows: clique com o botão direito no zip, Extrair tudo.
2. Faça duplo clique em "Abrir Basinbook.html". É preciso um navegador da
   Internet e mais nada: nem rede, nem instalação. Mantenha juntos todos os
   ficheiros desta pasta.
3. "livro de exemplo.zip" é o livro de uma unidade inventada, para
   experimentar. Abra-o no Basinbook com o botão "${button("Open files")}".
   Não o descompacte.

O seu trabalho não está nesta pen USB enquanto não o puser aqui. O navegador
guarda um rascunho no computador em que está. Carregue em
"${button("Save workbook")}" e copie o ficheiro das transferências para esta
pasta. Volte a abri-lo com "${button("Open files")}".

Esta pasta ocupa ${size.folder}, o seu zip ${size.zip}.

O Basinbook é uma ajuda ao planeamento, não um processo validado. O protocolo
nacional, as instruções do fabricante e o juízo do pessoal qualificado têm
prioridade. O cloro nunca se junta com vinagre, outro ácido ou amoníaco.

Licenças do programa e das suas partes: LICENCES.txt
`,
};
