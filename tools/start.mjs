// Shows what Sideport does, on the samples.   npm start
import { installLibraries, runNode } from './installed.mjs';

const program = 'server/bin/sideport.cjs';
const longEye = 'samples/sound/long-eye-ring.opnote.yaml';

function show(words) {
  console.log(`\n$ npx sideport ${words.join(' ')}\n`);
  return runNode(program, ...words);
}

installLibraries();
if (runNode('tools/build.mjs') !== 0) throw new Error('The build failed: see above.');

const sound = show(['check', 'samples/sound']);
console.log(sound === 0 ? 'Nothing to remark: the notes in samples/sound are sound.' : '');
const faulty = show(['check', 'samples/faulty']);
const computed = show(['compute', longEye]);

console.log(`
Next: open samples/ in an editor with the extension (npm run build -- --package writes client/sideport.vsix),
or try npx sideport explain. README.md has a tour.`);
process.exitCode = sound === 0 && faulty === 1 && computed === 0 ? 0 : 1;
