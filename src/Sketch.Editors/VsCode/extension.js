'use strict';

const vscode = require('vscode');
const { LanguageClient } = require('vscode-languageclient/node');
const { picturePage } = require('./picture-page.js');

const explanations = 'sketch-finding';
const languages = ['card', 'stash', 'batch'];

let client;

/** Starts the language server, and offers the picture of a card and the explanations of findings. */
async function activate(context) {
  const command = vscode.workspace.getConfiguration('sketch').get('command');
  client = new LanguageClient('sketch', 'Sketch', { command, args: ['language-server'] }, {
    documentSelector: languages.map((language) => ({ language })),
    initializationOptions: { explanationScheme: explanations },
  });
  context.subscriptions.push(
    vscode.commands.registerCommand('sketch.showPicture', () => showPicture(context)),
    vscode.workspace.registerTextDocumentContentProvider(explanations, {
      provideTextDocumentContent: async (uri) =>
        (await client.sendRequest('sketch/explanation', { code: uri.path.replace(/\.md$/, '') }))?.markdown ?? '',
    }));
  try {
    await client.start();
  } catch {
    vscode.window.showErrorMessage(`"${command}" cannot be started. Set sketch.command to the path of the Sketch program.`);
  }
}

function deactivate() {
  return client?.isRunning() ? client.stop() : undefined;
}

/** Shows the card of the active text beside it, and draws it anew after each change. */
async function showPicture(context) {
  const document = vscode.window.activeTextEditor?.document;
  if (document?.languageId !== 'card') {
    vscode.window.showInformationMessage('Open a card first: a file whose name ends in .card.');
    return;
  }
  const panel = vscode.window.createWebviewPanel('sketch.picture', 'Card', { viewColumn: vscode.ViewColumn.Beside, preserveFocus: true },
    { enableScripts: false, localResourceRoots: [] });
  let drawing = false;
  let again = false;
  let closed = false;
  // One request at a time; what is typed meanwhile is drawn once it is answered.
  const draw = async () => {
    again = true;
    if (drawing) return;
    drawing = true;
    try {
      while (again && !closed) {
        again = false;
        const card = await client.sendRequest('sketch/pictures', { textDocument: { uri: document.uri.toString() } });
        if (closed) break;
        panel.title = card.title || 'Card';
        panel.webview.html = picturePage(card);
      }
    } catch (failed) {
      if (!closed) panel.webview.html = picturePage({ title: 'Card', pictures: [], problem: failed.message });
    } finally {
      drawing = false;
    }
  };
  const following = vscode.workspace.onDidChangeTextDocument((change) => { if (change.document === document) draw(); });
  panel.onDidDispose(() => {
    closed = true;
    following.dispose();
  }, undefined, context.subscriptions);
  await draw();
}

module.exports = { activate, deactivate };
