import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseAst } from 'vite'

/** The texts that a source file holds, by the way in which they reach a page. */
export interface SourceTexts {
  readonly file: string
  /** Templates of statements, with the plain texts that are written straight into them. */
  readonly said: readonly string[]
  /** Texts that are looked up where they are written: `t('…')`. */
  readonly told: readonly string[]
  /** Every other text that is written there: labels in tables, and all that is no text for people. */
  readonly written: readonly string[]
  /** Texts for people within the drawing of a page that are not looked up. */
  readonly bare: readonly string[]
}

const ROOT = fileURLToPath(new URL('../../../../', import.meta.url))

/** What the files below a folder of the repository hold; tests and the catalogues themselves are left out. */
export function sourceTexts(folder: string): readonly SourceTexts[] {
  return readdirSync(ROOT + folder, { recursive: true, encoding: 'utf8' })
    .map((name) => `${folder}/${name.replaceAll('\\', '/')}`)
    .filter((file) => /\.tsx?$/.test(file) && !NOT_SHOWN.test(file))
    .map((file) => ({
      file,
      ...textsOf(parseAst(readFileSync(ROOT + file, 'utf8'), { lang: file.endsWith('x') ? 'tsx' : 'ts' })),
    }))
}

const NOT_SHOWN = /\.d\.ts$|\.test\.tsx?$|store-contract\.ts$|\/node_modules\/|\/test\/|\/words\/es\//

/** Attributes of elements and of our own parts that a person reads or hears. */
const READ_ALOUD = new Set(['aria-label', 'placeholder', 'title', 'alt', 'label', 'example', 'name', 'hint'])

interface Node {
  readonly type: string
  readonly [field: string]: unknown
}

function textsOf(program: unknown): Omit<SourceTexts, 'file'> {
  const found = { said: [] as string[], told: [] as string[], written: [] as string[], bare: [] as string[] }
  const visit = (node: Node): void => {
    switch (node.type) {
      case 'ImportDeclaration':
      case 'TSLiteralType':
        return
      case 'TaggedTemplateExpression':
        if (isNamed(node.tag, 'say')) {
          const { quasi } = node as unknown as { quasi: Node }
          found.said.push(template(quasi), ...childrenOf(quasi).flatMap(leaves))
        }
        break
      case 'CallExpression':
        if (isNamed(node.callee, 't')) found.told.push(...leaves((node.arguments as Node[])[0]!))
        break
      case 'JSXText':
        if (isForPeople(node.value as string)) found.bare.push((node.value as string).trim())
        break
      case 'JSXAttribute': {
        const { name, value } = node as unknown as { name: { name: string }; value: Node | null }
        if (value && READ_ALOUD.has(name.name)) found.bare.push(...bareIn(value))
        break
      }
      case 'JSXElement':
      case 'JSXFragment':
        for (const child of node.children as Node[]) {
          if (child.type === 'JSXExpressionContainer') found.bare.push(...bareIn(child))
        }
        break
      case 'BinaryExpression':
      case 'TemplateLiteral':
      case 'Literal':
        found.written.push(...leaves(node))
        break
    }
    childrenOf(node).forEach(visit)
  }
  visit(program as Node)
  return found
}

const bareIn = (node: Node) => leaves(node).filter(isForPeople)

/** Two letters in a row that are no number of a key and no unit. */
const isForPeople = (text: string) => /\p{L}{2}/u.test(text) && !/^(Chargewright|ABC|v\d.*)$/.test(text.trim())

/** The texts that an expression can turn out to be: a literal, parts joined by +, either side of a condition. */
function leaves(node: Node): readonly string[] {
  switch (node.type) {
    case 'Literal':
      return typeof node.value === 'string' ? [node.value] : []
    case 'TemplateLiteral':
      return templates(node)
    case 'BinaryExpression': {
      const [left, right] = [leaves(node.left as Node), leaves(node.right as Node)]
      return node.operator === '+' && left.length === 1 && right.length === 1 ? [left[0]! + right[0]!] : []
    }
    case 'ConditionalExpression':
      return [...leaves(node.consequent as Node), ...leaves(node.alternate as Node)]
    case 'LogicalExpression':
      return [...leaves(node.left as Node), ...leaves(node.right as Node)]
    case 'JSXExpressionContainer':
      return leaves(node.expression as Node)
    default:
      return []
  }
}

/** A template with its places numbered, or, where each place can only be one of a few texts, all that it can become. */
function templates(node: Node): readonly string[] {
  const choices = (node.expressions as readonly Node[]).map(leaves)
  if (choices.some((choice) => choice.length === 0)) return [template(node)]
  return choices.reduce<readonly string[]>(
    (texts, choice, place) => texts.flatMap((text) => choice.map((part) => text.replace(`{${place}}`, part))),
    [template(node)],
  )
}

function template(node: Node): string {
  const quasis = node.quasis as readonly { value: { cooked: string } }[]
  return quasis.map(({ value }) => value.cooked).reduce((text, part, i) => `${text}{${i - 1}}${part}`)
}

const isNamed = (node: unknown, name: string) => (node as Node).type === 'Identifier' && (node as Node).name === name

function childrenOf(node: Node): readonly Node[] {
  return Object.values(node)
    .flatMap((value) => (Array.isArray(value) ? value : [value]))
    .filter(isNode)
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value
