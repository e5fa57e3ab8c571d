// Reads the .trx results of one run: names what failed, with what it said, and what was skipped and why, and ends with one line of counts.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const folder = process.argv[2];
let [passed, failed, skipped] = [0, 0, 0];
const reasons = new Map();

const unescape = (text) =>
  text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&quot;", '"').replaceAll("&#xD;", "").replaceAll("&amp;", "&");

for (const file of readdirSync(folder).filter((name) => name.endsWith(".trx"))) {
  const text = readFileSync(join(folder, file), "utf8");
  for (const match of text.matchAll(/<UnitTestResult\b([^>]*?)(\/>|>([\s\S]*?)<\/UnitTestResult>)/g)) {
    const outcome = /outcome="([^"]*)"/.exec(match[1])?.[1];
    const name = unescape(/testName="([^"]*)"/.exec(match[1])?.[1] ?? "?");
    if (outcome === "Passed") passed++;
    else if (outcome === "NotExecuted") {
      skipped++;
      const reason = unescape(/<(?:StdOut|Message)>([\s\S]*?)<\//.exec(match[3] ?? "")?.[1] ?? "no reason given").trim();
      reasons.set(reason, (reasons.get(reason) ?? 0) + 1);
    } else {
      failed++;
      console.log(`failed: ${name}`);
      for (const part of ["Message", "StackTrace"]) {
        const said = unescape(new RegExp(`<${part}>([\\s\\S]*?)</${part}>`).exec(match[3] ?? "")?.[1] ?? "").trim();
        if (said) console.log(said.slice(0, 3000).replaceAll(/^/gm, "    "));
      }
    }
  }
}

for (const [reason, count] of reasons) console.log(`skipped ${count}: ${reason}`);
if (passed + failed === 0) {
  console.log("no test ran");
  failed++;
}

console.log(`\n${passed} passed, ${failed} failed, ${skipped} skipped`);
process.exit(failed === 0 ? 0 : 1);
