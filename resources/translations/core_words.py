#!/usr/bin/env python3
"""Collects the words of core that people read, so that they can be translated.

core knows nothing of Qt, so lupdate does not see its texts. This walks over its sources and writes each text,
once, as QT_TRANSLATE_NOOP("core", ...) into app/language/core_words.inc; a test fails when that file is not what
this writes. Texts that core joins ("the bore of " + name + " is not entered") become one with places: "the bore
of %1 is not entered". What stands in such a place is translated by itself.

    resources/translations/core_words.py [OUT]
"""
import itertools
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]

# Sources whose texts are keys, words of a file format, or columns of a table, never read on the screen.
NOT_READ = re.compile(
    r"core/(sketch/(words|schema|format/(describe\b|describe_.*|json_text|field)\b)|physics/(fluid_table|melinder)"
    r"|running/warm_up_csv|paperwork/parts_csv|checks/rules_page)")
# Of units only what explains them is put into words; their symbols and what can be typed stay as they are.
UNITS = "core/quantity/units.cpp"

# A single word in small letters is a key more often than not; these are read.
SINGLE_WORDS = set("""
    across advice air antifreeze area boils bore bores caution current doubtful ethylene exhaust falls fits ground height inlet
    level likewise off outlet part propylene rises stop steep station thread voltage
    chloride sulphate dimension port hose heater kind start end none buoyancy viscosity roughness direction nothing
    """.split())

TOKEN = re.compile(
    r"""(?P<comment>//[^\n]*|/\*.*?\*/)|(?P<pre>^[ \t]*\#(?:[^\n]*\\\n)*[^\n]*)
    |(?P<raw>R"(?P<d>[^(]*)\((?P<body>.*?)\)(?P=d)")|(?P<string>"(?:[^"\\\n]|\\.)*")|(?P<char>'(?:[^'\\\n]|\\.)*')
    |(?P<word>[A-Za-z_][\w:]*|[\d.][\w.']*)|(?P<op>\+=|\+\+|->|::|<<|==|!=|<=|>=|&&|\|\||[^\s])""",
    re.M | re.S | re.X)

BREAKS = {",", ";", "?", ":", "=", "+=", "return", "<<", "&&", "||", "==", "!=", "{", "<", ">"}
OPEN = {"(": ")", "{": "}", "[": "]"}
PLACE = "\0"
SEVERAL = 24  # variants of one joined text; more are a mistake in this script


class Text(str):
    """A string literal, told apart from other tokens."""


def unescaped(literal):
    return re.sub(r"\\x([0-9A-Fa-f]{2})|\\u([0-9A-Fa-f]{4})|\\(.)",
                  lambda m: chr(int(m[1] or m[2], 16)) if m[1] or m[2] else {"n": "\n", "t": "\t"}.get(m[3], m[3]),
                  literal)


def tokens_of(source):
    """Tokens with each bracket's inside as a list; neighbouring literals are one."""
    stack, now = [], []
    for found in TOKEN.finditer(source):
        kind = found.lastgroup
        if kind in ("comment", "pre", "char"):
            continue
        token = found[0]
        if kind == "string" or found["string"]:
            text = unescaped(token[1:-1])
            if now and isinstance(now[-1], Text):
                now[-1] = Text(now[-1] + text)
            else:
                now.append(Text(text))
        elif found["raw"]:
            now.append(Text(found["body"]))
        elif token in OPEN:
            stack.append(now)
            now.append([token])
            now = now[-1]
        elif token in OPEN.values():
            now = stack.pop() if stack else now
        else:
            now.append(token)
    return now


def parts_at(tokens, breaks):
    part = []
    for token in tokens:
        if not isinstance(token, (Text, list)) and token in breaks:
            yield part
            part = []
        else:
            part.append(token)
    yield part


def variants(operand):
    """What an operand of + can say; [PLACE] when that is not written here."""
    if len(operand) == 1 and isinstance(operand[0], Text):
        return [operand[0]]
    if operand and isinstance(operand[-1], list) and operand[-1][0] == "(":
        inside = operand[-1][1:]
        if operand[:-1] in (["std::string"], []):
            if len(inside) == 1 and isinstance(inside[0], Text):
                return [inside[0]]
            if "?" in inside:
                return [v for part in list(parts_at(inside, {"?", ":"}))[1:] for v in joined(part)]
    return [PLACE]


def joined(part):
    """Every text that a sum of literals and values can be."""
    said = [variants(operand) for operand in parts_at(part, {"+"})]
    return ["".join(one) for one in itertools.islice(itertools.product(*said), SEVERAL)]


def holds_text(tokens):
    return any(isinstance(token, Text) or (isinstance(token, list) and holds_text(token)) for token in tokens)


def texts_in(tokens):
    for part in parts_at(tokens, BREAKS):
        used = []
        if any(isinstance(token, Text) for token in part) or ("+" in part and holds_text(part)):
            for operand in parts_at(part, {"+"}):
                if variants(operand) != [PLACE]:
                    used += [token for token in operand if isinstance(token, list)]
            yield from joined(part)
        for token in part:
            if isinstance(token, list) and not any(token is one for one in used):
                yield from texts_in(token[1:] if token[0] in OPEN else token)


def readable(text):
    """A text for people, with a place where it is joined to another; empty when it is none."""
    if re.search(r"\A [A-Za-z(]", text):
        text = PLACE + text
    if re.search(r"[A-Za-z}] \Z", text):
        text += PLACE
    text = re.sub(PLACE + "+", PLACE, text)
    text = re.sub(r"\{\0\}", PLACE, text)
    text = re.sub(r"\A(\. |[\s,;:]+)|[\s,;:]+\Z", "", text)
    places = itertools.count(1)
    text = re.sub(PLACE, lambda _: "%" + str(next(places)), text)
    bare = re.sub(r"%\d|\{[a-z0-9](-[0-9])?\}", "", text).strip()
    if re.fullmatch(r"[a-z]+", bare) and bare == text:
        return text if bare in SINGLE_WORDS else ""
    no_words = (
        not re.search(r"[A-Za-z]{2}", bare)
        or re.search(r"[A-Za-z]_[A-Za-z]|\A[/#$<]|\\|://|\A-|\A[a-z]+-\Z", bare)
        or re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)+", text)  # a key; "%1 nose-up" is none
        or re.fullmatch(r"[A-Z]{3}|[\d./ ]*(AWG|awg|mm2|mm²|mm|ml|kWh|in|ft|min|J/kg K)|and|the", bare)
        and text not in ("1 in %1", "%1 and %2"))
    return "" if no_words else text


# What is made of a kind and a name, and of the last two of a list.
NAMED = ("Supply hose %1", "Return hose %1", "%1 and %2")


def core_texts():
    """Every text with the source that says it first, in the order of the sources."""
    said = dict.fromkeys(NAMED, "core/layout/wording.cpp")
    for path in sorted((ROOT / "core").rglob("*")):
        name = path.relative_to(ROOT).as_posix()
        if path.suffix not in (".cpp", ".h") or NOT_READ.search(name):
            continue
        for text in texts_in(tokens_of(path.read_text(encoding="utf-8"))):
            text = readable(text)
            if text and (name != UNITS or re.match(r"an? |%1 bores", text)):
                said.setdefault(text, name)
    return said


def written(said):
    out = ["// Made by resources/translations/core_words.py from the sources of core; not to be edited."]
    source = ""
    for text, name in said.items():
        if name != source:
            source = name
            out.append(f"// {name}")
        literal = text.replace("\\", "\\\\").replace('"', '\\"').replace("\n", "\\n")
        out.append(f'QT_TRANSLATE_NOOP("core", "{literal}"),')
    return "\n".join(out) + "\n"


if __name__ == "__main__":
    target = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "app/language/core_words.inc"
    target.write_text(written(core_texts()), encoding="utf-8")
