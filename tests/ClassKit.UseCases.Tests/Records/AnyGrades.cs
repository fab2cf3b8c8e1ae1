using System.Reflection;
using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Sheets;
using ClassKit.CellFormulas.Syntax;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Exercises.Deadlines;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Identity;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Edits;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Tests.Records;

/// <summary>
/// Grades as nobody would grade: any fact of any kind about anybody, with any numbers and any typed text, drawn from a seed.
/// </summary>
internal sealed class AnyGrades
{
    private static readonly string[] Texts =
    [
        "",
        "a",
        "=C7*C8",
        " 12,5 g",
        "“quoted” \\ \"",
        "Cleo Marín",
        "#DIV/0!",
        "true",
        "null",
        "١٢٣",
        "line\nbreak\ttab\r",
        "\u0001",
        "a/b/../c.xlsx",
        "=cmd()",
        "🍞 bread",
        "x".PadRight(400, 'y'),
    ];

    private static readonly NullabilityInfoContext Nullability = new();

    private readonly Random _random;
    private readonly DealtClass _dealt;
    private readonly DueMoment? _due;
    private Exercise _exercise = null!;
    private Part _part = null!;

    private AnyGrades(DealtClass dealt, int seed)
    {
        _random = new(seed);
        _dealt = dealt with
        {
            Marking = dealt.Marking with
            {
                Late = Maybe(new LatePolicy(0.1m, 0.5m)),
                Total = new(_random.Next(2) == 0 ? null : 1, _random.Next(2) == 0 ? null : 3),
            },
            TimeZone = Maybe(ClassTimeZone.Find("Asia/Kathmandu")),
            Due = Maybe(Due()),
            Purpose = Any<DealPurpose>(),
            Identity = Maybe(dealt.Identity),
        };
        _due = Due();
    }

    /// <summary>The grades of a deal.</summary>
    public static ClassGrades Of(DealtClass dealt, int seed)
    {
        var any = new AnyGrades(dealt, seed);
        return any.Grades();
    }

    private ClassGrades Grades() =>
        new(_dealt, [.. _dealt.Students.Select(Student)], [.. Enumerable.Range(0, _random.Next(5)).Select(File)])
        {
            Due = _due,
            Judging = Maybe(
                new JudgeRecord(_random.Next(1, 9), [.. _dealt.Exercises.Select(Pool)])
                {
                    Program = "9.8.7",
                    Choices =
                    [
                        .. _dealt.Students.SelectMany(seat =>
                            _dealt.ExercisesOf(seat).Select(exercise => new JudgeRecord.Choice(seat.Who.Id, exercise.Id, [0, 2, 1]))
                        ),
                    ],
                }
            ),
            Waiting = [.. Enumerable.Range(0, _random.Next(3)).Select(_ => Typed())],
            TakenOver = [.. Enumerable.Range(0, _random.Next(3)).Select(_ => Typed())],
            UnreadGradebooks = [.. Enumerable.Range(0, _random.Next(2)).Select(_ => (UnreadGradebook)Fact(typeof(UnreadGradebook)))],
        };

    private StudentGrade Student(DealtStudent seat) =>
        new(
            seat.Who,
            Any<GradeStatus>(),
            Maybe($"{seat.Who.Id} {Text()}.xlsx"),
            [.. _dealt.ExercisesOf(seat).SelectMany(exercise => exercise.Parts.Select(part => Answer(exercise, part)))],
            Several<Flag>()
        )
        {
            Rule = _dealt.Marking.Total,
            Late = Maybe(
                new Late(_random.Next(1, 9), _random.Next(0, 10) / 10m) { By = new(_random.NextInt64(0, TimeSpan.TicksPerDay * 30)) }
            ),
        };

    private AnswerGrade Answer(Exercise exercise, Part part)
    {
        (_exercise, _part) = (exercise, part);
        return new(
            exercise,
            part,
            Any<Outcome>(),
            _random.Next(0, 5000) / 10_000m,
            _random.Next(0, 3),
            Value(),
            Number(),
            Maybe(Text()),
            Several<AnswerFinding>(),
            _random.Next(2) == 0 ? new Dictionary<string, double>() : exercise.Parts.ToDictionary(one => one.Id, _ => Number())
        )
        {
            Correction = Maybe(new AppliedCorrection(_random.Next(0, 300) / 100m, Text())),
        };
    }

    private AccountedFile File(int at) =>
        new(
            $"{at} {Text()}",
            Maybe("0123abcd"),
            _random.Next(2) == 0 ? null : Moment(),
            FileFate.Refused,
            Maybe(Who()),
            (Uncounted?)Maybe(Fact(typeof(Uncounted)))
        )
        {
            Other = (OtherDeal?)Maybe(Fact(typeof(OtherDeal))),
            Fault = Maybe(Text()),
        };

    private JudgeRecord.Pool Pool(Exercise exercise) =>
        new(
            exercise.Id,
            [
                .. Enumerable
                    .Range(0, 3)
                    .Select(_ =>
                        (IReadOnlyDictionary<string, decimal>)
                            exercise.Givens.ToDictionary(given => given.Id, _ => _random.Next(-9999, 9999) / 1000m)
                    ),
            ]
        );

    private TypedPoints Typed() =>
        new(Text(), Who(), "any", "part", Points(), Text(), Points())
        {
            File = Text(),
            Fault = Maybe((TypedPointsFault)Fact(typeof(TypedPointsFault))),
        };

    private decimal? Points() => _random.Next(2) == 0 ? null : _random.Next(0, 400) / 100m;

    private DueMoment Due() =>
        new(new(2026, 3, 29, 2, 30, _random.Next(60), TimeSpan.FromMinutes(345)), ClassTimeZone.Find("Asia/Kathmandu")!)
        {
            Reading = Any<DueReading>(),
        };

    private DateTime Moment() => new(_random.NextInt64(new DateTime(2026, 6, 1).Ticks, new DateTime(2030, 1, 1).Ticks), DateTimeKind.Utc);

    private CellValue Value() =>
        _random.Next(5) switch
        {
            0 => CellValue.Blank,
            1 => CellValue.FromNumber(Number()),
            2 => CellValue.FromText(Text()),
            3 => CellValue.FromLogical(_random.Next(2) == 0),
            _ => CellValue.FromError(Any<CellError>()),
        };

    private double Number() =>
        _random.Next(4) switch
        {
            0 => 0,
            1 => _random.NextDouble(),
            2 => -1e300 * _random.NextDouble(),
            _ => _random.Next(-1000, 1000) / 7d,
        };

    private string Text() => Texts[_random.Next(Texts.Length)];

    private Student Who() => _dealt.Students[_random.Next(_dealt.Students.Count)].Who;

    private T Any<T>()
        where T : struct, Enum => Enum.GetValues<T>()[_random.Next(Enum.GetValues<T>().Length)];

    private T? Maybe<T>(T? value)
        where T : class => _random.Next(2) == 0 ? null : value;

    private List<T> Several<T>()
        where T : class => [.. Enumerable.Range(0, _random.Next(4)).Select(_ => (T)Fact(typeof(T)))];

    /// <summary>A fact of a type, or of any of its kinds.</summary>
    private object Fact(Type type)
    {
        var kinds = type.GetNestedTypes().Where(kind => kind.IsSealed && kind.IsAssignableTo(type)).ToList();
        var made = kinds.Count == 0 ? type : kinds[_random.Next(kinds.Count)];
        var constructor = made.GetConstructors().Single(one => one.GetParameters() is not [{ } only] || only.ParameterType != made);
        return constructor.Invoke([.. constructor.GetParameters().Select(Argument)]);
    }

    private object? Argument(ParameterInfo parameter)
    {
        // What stands in an edit is part of a formula, and there is at least one edit.
        if (
            (
                parameter.Member.DeclaringType!.IsAssignableTo(typeof(KeyEdit))
                || parameter.Member.DeclaringType == typeof(AnswerFinding.RoundsWithin)
            )
            && parameter.ParameterType == typeof(string)
        )
            return _part.Key.Text[1..];
        if (parameter.Member.DeclaringType == typeof(AnswerFinding.NearMiss) && parameter.ParameterType == typeof(string))
            return _part.Key.Text;
        if (parameter.ParameterType == typeof(IReadOnlyList<KeyEdit>))
            return new[] { (KeyEdit)Fact(typeof(KeyEdit)) };
        var isNullable = !parameter.ParameterType.IsValueType && Nullability.Create(parameter).WriteState == NullabilityState.Nullable;
        return isNullable && _random.Next(2) == 0 ? null : Of(parameter.ParameterType);
    }

    private object Of(Type type)
    {
        if (type == typeof(string))
            return Text();
        if (type == typeof(bool))
            return _random.Next(2) == 0;
        if (type == typeof(int))
            return _random.Next(-3, 2000);
        if (type == typeof(double))
            return Number();
        if (type == typeof(decimal))
            return _random.Next(-5000, 5000) / 1000m;
        if (type == typeof(DateTime))
            return Moment();
        if (type == typeof(Student))
            return Who();
        if (type == typeof(Part))
            return _exercise.Parts[_random.Next(_exercise.Parts.Count)];
        if (type == typeof(Given))
            return _exercise.Givens[_random.Next(_exercise.Givens.Count)];
        if (type == typeof(Misconception))
            return _part.Misconceptions.Count > 0
                ? _part.Misconceptions[_random.Next(_part.Misconceptions.Count)]
                : new Misconception("unheard_of", CellFormula.Of("=NA()"), "");
        if (type == typeof(DueMoment))
            return _due!;
        if (type == typeof(CellAddress))
            return new CellAddress(Text(), _random.Next(1, 9999), _random.Next(1, 999));
        if (type == typeof(long))
            return (long)_random.Next();
        if (type == typeof(int?))
            return _random.Next(2000);
        if (type == typeof(SyntaxError))
            return CellFormula.Parse("=" + Text() + "(").Error!;
        if (type == typeof((string, string)))
            return (_exercise.Id, _part.Id);
        if (type == typeof(IReadOnlyDictionary<string, string>))
            return new Dictionary<string, string> { [Text()] = Text() };
        if (type.IsEnum)
            return type.GetEnumValues().GetValue(_random.Next(type.GetEnumValues().Length))!;
        if (!type.IsGenericType || type.GetGenericTypeDefinition() != typeof(IReadOnlyList<>))
            return Fact(type);
        var list = Array.CreateInstance(type.GetGenericArguments()[0], _random.Next(4));
        for (var at = 0; at < list.Length; at++)
            list.SetValue(Of(type.GetGenericArguments()[0]), at);
        return list;
    }
}
