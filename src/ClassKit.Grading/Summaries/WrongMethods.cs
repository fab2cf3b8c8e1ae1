using ClassKit.CellFormulas.Evaluating;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Keys;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.NearMisses;
using ClassKit.Grading.Numbers;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Summaries;

/// <summary>Puts the wrong answers of a class that no misconception names together by what they do.</summary>
/// <remarks>
/// Two formulas are one method if each gives what the other does on everybody's numbers. A typed number joins a method that gives it to its
/// digits for its student's numbers, if only one does.
/// </remarks>
public static class WrongMethods
{
    /// <summary>Fewer are no group.</summary>
    public const int Fewest = 2;

    /// <summary>
    /// Fewer could tell in a report without names who is meant. Common practice, no source: lines of three to ten are usual.
    /// </summary>
    public const int FewestWithoutNames = 5;

    /// <summary>On so many students' numbers formulas are held against each other.</summary>
    private const int MostTried = 40;

    /// <summary>All methods that enough students used, those with the most students first.</summary>
    /// <param name="grades">Of the class.</param>
    /// <param name="fewest">How many students make a group, at least <see cref="Fewest"/>.</param>
    public static IReadOnlyList<WrongMethod> In(ClassGrades grades, int fewest = Fewest)
    {
        ArgumentNullException.ThrowIfNull(grades);
        var seats = grades.Dealt.Students.ToDictionary(seat => seat.Who.Id, StringComparer.Ordinal);
        var parts = new OrderedDictionary<(string, string), Asked>();
        foreach (var student in grades.Students.Where(student => student.Status == GradeStatus.Graded && seats.ContainsKey(student.Who.Id)))
        {
            foreach (var answer in student.Answers)
            {
                var key = (answer.Exercise.Id, answer.Part.Id);
                if (!parts.TryGetValue(key, out var asked))
                    parts.Add(key, asked = new());
                asked.Add(new(student, seats[student.Who.Id], answer));
            }
        }
        return
        [
            .. parts
                .Values.SelectMany(In)
                .Where(method => method.Students.Count >= fewest)
                .OrderByDescending(method => method.Students.Count),
        ];
    }

    private static IEnumerable<WrongMethod> In(Asked part)
    {
        var wrong = part.Wrong;
        if (wrong.Count < Fewest)
            return [];
        List<NamedValues> tried = [.. part.First.Select(given => new NamedValues(given.Names(), SearchBudget.OneFormula))];
        var groups = new List<Group>();
        var known = new Dictionary<string, Group>(StringComparer.Ordinal);
        foreach (
            var (given, formula, edits) in wrong
                .Select(given => (given, Formula: Method(given.Answer, out var edits), edits))
                .Where(one => one.Formula is not null)
        )
        {
            // What two wrote alike does alike.
            if (!known.TryGetValue(formula!.Text, out var group))
            {
                List<double?> values = [.. tried.Select(names => names.Number(formula.Root))];
                // What gives no number anywhere, or is too much work, does nothing that could be held against another.
                if (values.TrueForAll(value => value is null))
                    continue;
                group = groups.Find(other =>
                    other
                        .Values.Zip(values)
                        .All(pair =>
                            pair is { First: { } one, Second: { } two }
                                ? Near.Computed.Same(one, two)
                                : pair.First is null && pair.Second is null
                        )
                );
                if (group is null)
                    groups.Add(group = new(formula, values));
                known[formula.Text] = group;
            }
            group.Take(given, formula, edits);
        }
        foreach (
            var typed in wrong.Where(given =>
                given.Answer is { Formula: null, Value.IsNumber: true } && Method(given.Answer, out _) is null
            )
        )
        {
            if (groups.Where(group => typed.Fits(group.Formula)).Take(2).ToList() is [var only])
                only.Take(typed, only.Formula, []);
        }
        return groups.Select(group => group.Of(part.HandedIn));
    }

    /// <summary>What an answer does, over the exercise's names; null where it cannot be told.</summary>
    private static CellFormula? Method(AnswerGrade answer, out IReadOnlyList<KeyEdit> edits)
    {
        edits = answer.Findings is [AnswerFinding.NearMiss near, ..] ? near.Edits : [];
        return answer.Findings switch
        {
            [AnswerFinding.NearMiss miss, ..] => CellFormula.Of(miss.Formula),
            [AnswerFinding.NotRight { Formula: { } formula }, ..] => CellFormula.Of(formula),
            _ => null,
        };
    }

    /// <summary>What is needed of the answers to one part: the first ones' numbers, and those that are wrong.</summary>
    private sealed class Asked
    {
        public List<Given> First { get; } = [];

        public List<Given> Wrong { get; } = [];

        public int HandedIn { get; private set; }

        public void Add(Given given)
        {
            if (First.Count < MostTried)
                First.Add(given);
            if (given.Answer.Outcome == Outcome.Incorrect && given.Answer.Part.IsNumber)
                Wrong.Add(given);
            if (given.Answer.Outcome != Outcome.Blank)
                HandedIn++;
        }
    }

    private sealed record Given(StudentGrade Student, DealtStudent Seat, AnswerGrade Answer)
    {
        public Dictionary<string, CellValue> Names() =>
            KeyValues.Names(Seat.GivensOf(Answer.Exercise.Id), Seat.AnswersOf(Answer.Exercise.Id));

        public bool Fits(CellFormula method) =>
            new[]
            {
                Names(),
                KeyValues.Names(Seat.GivensOf(Answer.Exercise.Id), Seat.AnswersOf(Answer.Exercise.Id).Concat(Answer.OwnEarlierAnswers)),
            }.Any(names =>
                new NamedValues(names, SearchBudget.OneFormula).Number(method.Root) is { } value
                && TypedDigits.AreThoseOf(value, Answer.Value.Number)
            );
    }

    private sealed class Group(CellFormula formula, IReadOnlyList<double?> values)
    {
        private readonly List<Given> _answers = [];
        private IReadOnlyList<KeyEdit> _edits = [];

        public CellFormula Formula { get; private set; } = formula;

        public IReadOnlyList<double?> Values => values;

        public void Take(Given given, CellFormula formula, IReadOnlyList<KeyEdit> edits)
        {
            _answers.Add(given);
            if (edits.Count > 0 && _edits.Count == 0)
                (Formula, _edits) = (formula, edits);
            else if (_edits.Count == 0 && formula.Text.Length < Formula.Text.Length)
                Formula = formula;
        }

        public WrongMethod Of(int asked) =>
            new(
                _answers[0].Answer.Exercise,
                _answers[0].Answer.Part,
                Formula,
                _edits,
                [.. _answers.Select(given => given.Student.Who)],
                asked
            )
            {
                Example = _answers.Select(given => given.Answer.Formula).FirstOrDefault(typed => typed is not null),
            };
    }
}
