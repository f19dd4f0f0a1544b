// The command line program, in folders of its own.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';

export class Program {
  constructor(path) {
    this.path = path;
  }

  /** Runs it in a folder; what it says, and its exit code. */
  run(args, cwd) {
    const [command, ...first] = this.path.endsWith('.dll') ? ['dotnet', this.path] : [this.path];
    try {
      return { code: 0, out: execFileSync(command, [...first, ...args], { cwd, encoding: 'utf8', stdio: 'pipe' }), error: '' };
    } catch (failed) {
      return { code: failed.status, out: failed.stdout, error: failed.stderr };
    }
  }

  /** Files that `make` makes of a project file's text, by name; null where it makes none, with what it says. */
  make(text, only = []) {
    const folder = mkdtempSync(join(tmpdir(), 'live-'));
    try {
      writeFileSync(join(folder, 'project.yaml'), text);
      const said = this.run(['make', 'project.yaml', '-o', 'out', ...(only.length > 0 ? ['--only', only.join(',')] : [])], folder);
      const out = join(folder, 'out');
      const files = {};
      for (const entry of said.code === 0 || said.code === 1 ? readdirSync(out, { recursive: true, withFileTypes: true }) : []) {
        if (entry.isFile()) {
          const path = join(entry.parentPath ?? entry.path, entry.name);
          files[relative(out, path)] = readFileSync(path);
        }
      }

      return { ...said, files };
    } finally {
      rmSync(folder, { recursive: true });
    }
  }
}
