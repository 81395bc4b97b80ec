/** The page that holds the drawings. Nothing is loaded but its own script, and only that script may run. */
export function pageFrame(script: string, source: string): string {
  // Drawings carry style attributes, which a policy can only allow as a whole.
  const policy = `default-src 'none'; style-src 'unsafe-inline'; script-src ${source};`;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>Picture of the eye</title>
<style>
body { padding: 0; }
h1 { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); margin: 0; }
section { max-width: 60rem; margin: 0 auto 1rem; }
svg { display: block; width: 100%; height: auto; }
p { padding: 1rem; }
</style>
</head>
<body>
<h1>Picture of the eye</h1>
<main></main>
<script src="${script}"></script>
</body>
</html>`;
}
