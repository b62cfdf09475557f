/**
 * Reads a four-state value change dump by the grammar of IEEE 1364-2005, 18.2.1: declaration commands, then simulation commands,
 * each token between white space. Throws where the text is not derived by it.
 */
export interface Dump {
  readonly sections: Readonly<Record<string, string>>;
  readonly scopes: readonly string[];
  readonly variables: readonly { type: string; size: number; code: string; reference: string }[];
  /** Values by time; those of the initial $dumpvars under 0. */
  readonly changes: readonly { time: number; value: string; code: string }[];
}

const declarations = ['$comment', '$date', '$scope', '$timescale', '$upscope', '$var', '$version'];
const scopeTypes = ['begin', 'fork', 'function', 'module', 'task'];
const variableTypes =
  'event integer parameter real realtime reg supply0 supply1 time tri triand trior trireg tri0 tri1 wand wire wor'.split(
    ' ',
  );

export function readDump(text: string): Dump {
  const tokens = text.split(/[ \t\r\n]+/).filter((token) => token !== '');
  let at = 0;
  const next = (): string => {
    const token = tokens[at++];
    if (token === undefined) throw new Error('the dump ends too early');
    return token;
  };
  const must = (holds: boolean, why: string): void => {
    if (!holds) throw new Error(`${why} near token ${at}: ${tokens.slice(at - 3, at + 2).join(' ')}`);
  };
  const toEnd = (): string[] => {
    const found: string[] = [];
    for (let token = next(); token !== '$end'; token = next()) found.push(token);
    return found;
  };
  const sections: Record<string, string> = {};
  const scopes: string[] = [];
  const variables: { type: string; size: number; code: string; reference: string }[] = [];
  let depth = 0;
  for (let keyword = next(); keyword !== '$enddefinitions'; keyword = next()) {
    must(declarations.includes(keyword), `${keyword} is no declaration command`);
    const words = toEnd();
    if (keyword === '$scope') {
      must(words.length === 2 && scopeTypes.includes(words[0] ?? ''), 'scope');
      must(isIdentifier(words[1] ?? ''), 'scope identifier');
      scopes.push(words[1] ?? '');
      depth++;
    } else if (keyword === '$upscope') {
      must(words.length === 0 && depth-- > 0, 'upscope');
    } else if (keyword === '$timescale') {
      must(/^(1|10|100) ?(s|ms|us|ns|ps|fs)$/.test(words.join(' ')), 'timescale');
    } else if (keyword === '$var') {
      const [type = '', size = '', code = '', reference = ''] = words;
      must(words.length === 4 && variableTypes.includes(type), 'variable');
      must(/^[1-9]\d*$/.test(size) && isCode(code) && isIdentifier(reference), 'variable');
      variables.push({ type, size: Number(size), code, reference });
    }
    if (keyword !== '$var') sections[keyword] = words.join(' ');
  }
  must(toEnd().length === 0 && depth === 0, 'enddefinitions');

  const changes: { time: number; value: string; code: string }[] = [];
  let time: number | undefined;
  let dumping = false;
  while (at < tokens.length) {
    const token = next();
    if (token.startsWith('#')) {
      must(/^#\d+$/.test(token), 'simulation time');
      const later = Number(token.slice(1));
      must(time === undefined || later > time, 'time must go on');
      time = later;
    } else if (token === '$dumpvars') {
      must(!dumping, 'dumpvars');
      dumping = true;
    } else if (token === '$end') {
      must(dumping, 'end');
      dumping = false;
    } else {
      const [, value = '', code = ''] = /^([01xXzZ])([!-~]+)$/.exec(token) ?? [];
      must(
        variables.some((each) => each.code === code && each.size === 1),
        `${token} changes nothing declared`,
      );
      changes.push({ time: time ?? 0, value, code });
    }
  }
  must(!dumping, 'dumpvars without end');
  return { sections, scopes, variables, changes };
}

const isCode = (text: string): boolean => /^[!-~]+$/.test(text);
/** A simple identifier of the language: 3.7 of the same standard. */
const isIdentifier = (text: string): boolean => /^[A-Za-z_][A-Za-z0-9_$]*$/.test(text);
