// The files of `vscode-vfs://notes/set`, given by the address of this extension's own files.json; kept in memory only.
const vscode = require('vscode');

exports.activate = async function activate(context) {
  const given = await vscode.workspace.fs.readFile(vscode.Uri.joinPath(context.extensionUri, 'files.json'));
  const files = new Map();
  for (const [name, text] of Object.entries(JSON.parse(new TextDecoder().decode(given)))) {
    files.set(`/set/${name}`, new TextEncoder().encode(text));
  }
  const changed = new vscode.EventEmitter();
  const provider = {
    onDidChangeFile: changed.event,
    watch: () => new vscode.Disposable(() => {}),
    stat(uri) {
      const file = files.get(uri.path);
      if (file) return { type: vscode.FileType.File, ctime: 0, mtime: 0, size: file.length };
      if (uri.path === '/set' || uri.path === '/')
        return { type: vscode.FileType.Directory, ctime: 0, mtime: 0, size: 0 };
      throw vscode.FileSystemError.FileNotFound(uri);
    },
    readDirectory(uri) {
      if (uri.path !== '/set') throw vscode.FileSystemError.FileNotFound(uri);
      return [...files.keys()].map((path) => [path.slice('/set/'.length), vscode.FileType.File]);
    },
    readFile(uri) {
      const file = files.get(uri.path);
      if (!file) throw vscode.FileSystemError.FileNotFound(uri);
      return file;
    },
    writeFile(uri, content) {
      files.set(uri.path, content);
      changed.fire([{ type: vscode.FileChangeType.Changed, uri }]);
    },
    createDirectory() {},
    delete(uri) {
      files.delete(uri.path);
    },
    rename() {
      throw vscode.FileSystemError.NoPermissions();
    },
  };
  context.subscriptions.push(
    vscode.workspace.registerFileSystemProvider('vscode-vfs', provider, { isCaseSensitive: true }),
  );
};
