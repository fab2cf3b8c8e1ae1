"""Fill dealt workbooks with openpyxl and mark them with arithmetic of our own.

Knows nothing of ClassKit but the contract of dealt.json: where the cells are, and keys and misconceptions as cell formulas over
names. Usage: fill_and_mark.py DEALT RETURNED EXPECTED SEED. Writes a workbook a student into RETURNED and, into EXPECTED, the outcome
and the number that each answer must be given.
"""
import json
import math
import random
import re
import sys
from pathlib import Path

import openpyxl

NAME = re.compile(r"[A-Za-z_][A-Za-z0-9_]*(?!\()\b")
FUNCTIONS = {
    "ROUND": lambda x, n=0: math.copysign(math.floor(abs(x) * 10**n + 0.5) / 10**n, x),
    "ROUNDUP": lambda x, n=0: math.copysign(math.ceil(abs(x) * 10**n - 1e-9) / 10**n, x),
    "INT": math.floor,
    "SUM": lambda *xs: sum(xs),
}


def compute(formula, values):
    """A key or misconception as Python arithmetic: enough for + - * / ( ) and the functions above."""
    expression = formula.removeprefix("=").replace("^", "**")
    return eval(expression, {"__builtins__": {}}, {**FUNCTIONS, **values})  # noqa: S307 - our own dealt file


def put(formula, texts):
    """The formula with names replaced by texts, such as cells."""
    return NAME.sub(lambda match: texts.get(match.group(0), match.group(0)), formula)


def accepts(tolerance, expected, actual):
    around = tolerance["amount"] * (abs(expected) if tolerance["relative"] else 1)
    return abs(expected - actual) <= around + 1e-9 * max(1, abs(expected))


def uses(formula, part):
    return part in NAME.findall(formula)


class Paper:
    """One student's answers to one exercise, filled in and marked as they are written."""

    def __init__(self, chance, book, exercise, student):
        self.chance, self.book, self.exercise = chance, book, exercise
        of_exercise = [given for given in student["givens"] if given["exercise"] == exercise["id"]]
        self.givens = {given["name"]: given["value"] for given in of_exercise}
        self.cells = {given["name"]: given["cell"] for given in of_exercise}
        self.constants = {given["id"] for given in exercise["givens"] if given["from"] == given["to"]}
        self.places = {answer["part"]: answer for answer in student["answers"] if answer["exercise"] == exercise["id"]}
        self.right = {part: place["expected"] for part, place in self.places.items()}
        self.own = {}  # numbers that stand in answer cells, as the student has them
        self.fine = {}  # part -> the number is right
        self.expected = []

    def answer_all(self):
        for part in self.exercise["parts"]:
            self.answer(part)
        return self.expected

    def answer(self, part):
        if "choice" in part:
            return self.choose(part)
        if "inWords" in part:
            return self.tell(part)
        key = part["key"]
        earlier = [other for other in self.own.keys() | self.fine.keys() if uses(key, other)]
        slipped = [other for other in earlier if other in self.own and not self.fine[other]]
        waiting = [other for other in earlier if other not in self.own]
        ways = ["cells"] * 6 + ["typed", "typed", "blank", "slip", "zero", "words"]
        if part["misconceptions"]:
            ways += ["wrong turn", "wrong turn typed"]
        if not slipped and not waiting:
            ways += ["unit", "comma", "partly typed", "inline"]
        if slipped and not waiting:
            ways += ["follow typed"]
        way = self.chance.choice(ways)
        getattr(self, "do_" + way.replace(" ", "_"))(part, slipped, waiting)

    def choose(self, part):
        """Picks an option and writes its words: the letters stand in an order of the student's own."""
        options = part["choice"]["options"]
        right = round(compute(part["key"], self.with_own()))
        way = self.chance.choice(["right", "right", "any", "blank", "words"])
        if way == "blank":
            return self.write(part, None, "blank")
        if way == "words":
            return self.write(part, "do not know", "unreadable")
        chosen = right if way == "right" else self.chance.randint(1, len(options))
        known = {round(compute(one["formula"], self.with_own())): one["id"] for one in part["misconceptions"]}
        outcome = "value-only" if chosen == right else "misconception" if chosen in known else "incorrect"
        self.write(part, options[chosen - 1]["words"], outcome, chosen, known.get(chosen) if outcome == "misconception" else None)

    def tell(self, part):
        """Nobody judges what is said in own words, but that something is said."""
        if self.chance.random() < 0.3:
            return self.write(part, None, "blank")
        self.write(part, "I would look at the oven before the tray goes in.", "unsupported")

    def write(self, part, content, outcome, number=None, misconception=None):
        place = self.places[part["id"]]
        if content is not None:
            self.book[place["sheet"]][place["cell"]] = content
        self.fine[part["id"]] = outcome in ("sound", "value-only")
        if number is not None:
            self.own[part["id"]] = number
        self.expected.append({"exercise": self.exercise["id"], "part": part["id"], "outcome": outcome, "misconception": misconception,
                              "wrote": str(content)})

    def cell_names(self):
        return {**self.cells, **{part: place["cell"] for part, place in self.places.items()}}

    def with_own(self):
        return {**self.givens, **self.right, **self.own}

    def do_cells(self, part, slipped, waiting):
        # An empty or broken cell before this one makes the number in this one wrong, though its method is right.
        number = None if waiting else compute(part["key"], self.with_own())
        # A slip so small that it stays inside this part's tolerance leaves the number right.
        carried = waiting or (slipped and not accepts(part["tolerance"], self.right[part["id"]], number))
        outcome = "follow-through" if carried else "sound"
        self.write(part, put(part["key"], self.cell_names()), outcome, number)

    def do_inline(self, part, slipped, waiting):
        texts = dict(self.cells)
        for other in self.exercise["parts"]:
            if other["id"] == part["id"]:
                break
            texts[other["id"]] = "(" + put(other["key"], texts).removeprefix("=") + ")"
        self.write(part, put(part["key"], texts), "sound", self.right[part["id"]])

    def do_typed(self, part, slipped, waiting):
        number = float(f"{self.right[part['id']]:.8g}")
        self.write(part, number, "value-only", number)

    def do_follow_typed(self, part, slipped, waiting):
        number = compute(part["key"], self.with_own())
        if accepts(part["tolerance"], self.right[part["id"]], number):
            return self.do_typed(part, slipped, waiting)
        self.write(part, number, "follow-through", number)

    def do_blank(self, part, slipped, waiting):
        self.write(part, None, "blank")

    def do_slip(self, part, slipped, waiting):
        factor = 1.37
        while self.has_a_meaning(part, number := round(self.right[part["id"]] * factor + 0.0137, 4)):
            factor += 0.11
        self.write(part, number, "incorrect", number)

    def has_a_meaning(self, part, number):
        """Whether a number is what some method gives, on right or on own earlier answers: then it is no mere slip."""
        formulas = [part["key"]] + [misconception["formula"] for misconception in part["misconceptions"]]
        carried = {**self.givens, **self.right, **self.own}
        for other in self.exercise["parts"]:
            if other["id"] in self.fine and other["id"] not in self.own:
                carried[other["id"]] = compute(other["key"], carried)
        return any(accepts(part["tolerance"], compute(formula, names), number) for formula in formulas
                   for names in ({**self.givens, **self.right}, carried))

    def do_zero(self, part, slipped, waiting):
        cell = next(iter(self.cells.values()))
        self.write(part, f"={cell}/0", "incorrect")

    def do_words(self, part, slipped, waiting):
        self.write(part, "do not know", "unreadable")

    def do_unit(self, part, slipped, waiting):
        if part["unit"] == "%":
            # A spreadsheet takes this text for a number where one is wanted, so formulas on it work.
            self.write(part, f"{self.right[part['id']] * 100:.6f} %", "value-only", self.right[part["id"]])
        else:
            self.write(part, f"{self.right[part['id']]:.6f} {part['unit']}".strip() + ("" if part["unit"] else " pieces"), "value-only")

    def do_comma(self, part, slipped, waiting):
        self.write(part, f"{self.right[part['id']]:.6f}".replace(".", ","), "value-only")

    def do_partly_typed(self, part, slipped, waiting):
        drawn = [name for name in self.cells if uses(part["key"], name) and name not in self.constants]
        if not drawn:
            return self.do_cells(part, slipped, waiting)
        typed = self.chance.choice(drawn)
        texts = {**self.cell_names(), typed: repr(self.givens[typed])}
        self.write(part, put(part["key"], texts), "value-only", self.right[part["id"]])

    def wrong_turn(self, part, slipped, waiting):
        """A misconception whose own number tells it from the right one and from following through, or None."""
        misconception = self.chance.choice(part["misconceptions"])
        names = self.with_own()
        needed = [other for other in self.fine if uses(misconception["formula"], other)]
        if any(other not in self.own for other in needed) or slipped or waiting or any(not self.fine[other] for other in needed):
            return None
        number = compute(misconception["formula"], names)
        return (misconception, number) if not accepts(part["tolerance"], self.right[part["id"]], number) else None

    def do_wrong_turn(self, part, slipped, waiting):
        found = self.wrong_turn(part, slipped, waiting)
        if found is None:
            return self.do_cells(part, slipped, waiting)
        misconception, number = found
        self.write(part, put(misconception["formula"], self.cell_names()), "misconception", number, misconception["id"])

    def do_wrong_turn_typed(self, part, slipped, waiting):
        found = self.wrong_turn(part, slipped, waiting)
        if found is None:
            return self.do_cells(part, slipped, waiting)
        misconception, number = found
        self.write(part, number, "misconception", number, misconception["id"])


def main():
    dealt_folder, returned_folder, expected_file, seed = sys.argv[1:5]
    dealt = json.loads(Path(dealt_folder, "dealt.json").read_text(encoding="utf-8"))
    Path(returned_folder).mkdir(parents=True, exist_ok=True)
    expected = []
    for student in dealt["students"]:
        chance = random.Random(f"{seed} {student['id']}")
        book = openpyxl.load_workbook(Path(dealt_folder, student["workbook"]))
        answers = []
        for exercise in dealt["exercises"]:
            answers += Paper(chance, book, exercise, student).answer_all()
        book.save(Path(returned_folder, student["id"] + ".xlsx"))
        expected.append({"id": student["id"], "answers": answers})
    Path(expected_file).write_text(json.dumps({"students": expected}, indent=1), encoding="utf-8")


main()
