using System.Globalization;
using System.Xml.Linq;

namespace ClassKit.ItemBanks.Tests.Support;

/// <summary>
/// A delivering program in small: draws an item's numbers and marks answers, by the processing rules of 1EdTech QTI 3.0 (Assessment,
/// Section and Item information model) as far as our items use them. It shares no code with the writer. Rules from memory of the standard.
/// </summary>
internal sealed class Delivery
{
    private const int MostDraws = 100;
    private static readonly XNamespace Space = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";

    private readonly XElement _item;
    private readonly Dictionary<string, object?> _variables = [];
    private readonly Dictionary<string, object> _correct = [];

    public Delivery(XElement item, Random random)
    {
        _item = item;
        foreach (var response in Children(item, "response-declaration"))
        {
            if (response.Descendants(Space + "qti-value").FirstOrDefault() is { } value)
                _correct[Id(response)] = (string?)response.Attribute("base-type") == "identifier" ? value.Value : Number(value.Value);
        }
        if (item.Element(Space + "qti-template-processing") is { } processing)
            Draw(processing, random);
    }

    /// <summary>How often the numbers were drawn before the constraints held.</summary>
    public int Draws { get; private set; }

    public IReadOnlyDictionary<string, object?> Variables => _variables;

    public double Correct(string response) => (double)_correct[response];

    /// <summary>The identifier of the choice that is right.</summary>
    public string Choice(string response) => (string)_correct[response];

    /// <summary>What is right, whatever is asked.</summary>
    public object Right(string response) => _correct[response];

    /// <summary>Marks numbers; a response that is missing is null.</summary>
    public (double Score, IReadOnlyList<string> Said) Mark(IReadOnlyDictionary<string, double> responses) =>
        MarkAll(responses.ToDictionary(response => response.Key, response => (object)response.Value));

    /// <summary>Marks numbers and identifiers of choices; a response that is missing is null.</summary>
    public (double Score, IReadOnlyList<string> Said) MarkAll(IReadOnlyDictionary<string, object> responses)
    {
        foreach (var outcome in Children(_item, "outcome-declaration"))
            _variables[Id(outcome)] = outcome.Descendants(Space + "qti-value").FirstOrDefault() is { } value ? Number(value.Value) : null;
        foreach (var response in Children(_item, "response-declaration"))
            _variables[Id(response)] = responses.TryGetValue(Id(response), out var answer) ? answer : null;
        foreach (var condition in Children(_item.Element(Space + "qti-response-processing")!, "response-condition"))
        {
            // The first branch whose condition is true; null counts as false.
            if (condition.Elements().FirstOrDefault(branch => Evaluate(branch.Elements().First(), new Random(0)) is true) is not { } taken)
                continue;
            foreach (var rule in Children(taken, "set-outcome-value"))
                _variables[Id(rule)] = Evaluate(rule.Elements().Single(), new Random(0));
        }
        var said = Children(_item, "modal-feedback")
            .Where(feedback => (string?)_variables[(string)feedback.Attribute("outcome-identifier")!] == Id(feedback))
            .Select(feedback => feedback.Element(Space + "qti-content-body")!.Value)
            .ToList();
        return ((double)_variables["SCORE"]!, said);
    }

    private void Draw(XElement processing, Random random)
    {
        for (Draws = 1; Draws <= MostDraws; Draws++)
        {
            if (TryDraw(processing, random))
                return;
        }
        throw new InvalidOperationException("The constraints never held.");
    }

    private bool TryDraw(XElement processing, Random random)
    {
        foreach (var rule in processing.Elements())
        {
            var value = Evaluate(rule.Elements().Single(), random);
            switch (rule.Name.LocalName)
            {
                case "qti-set-template-value":
                    _variables[Id(rule)] = value;
                    break;
                case "qti-template-constraint":
                    if (value is not true)
                        return false;
                    break;
                case "qti-set-correct-response":
                    _correct[Id(rule)] = value!;
                    break;
                default:
                    throw new InvalidOperationException($"{rule.Name.LocalName} is no template rule.");
            }
        }
        return true;
    }

    private object? Evaluate(XElement expression, Random random)
    {
        object? Of(XElement operand) => Evaluate(operand, random);
        var operands = expression.Elements().ToList();
        var name = expression.Name.LocalName;
        if (name == "qti-base-value")
        {
            return (string)expression.Attribute("base-type")! switch
            {
                "float" => Number(expression.Value),
                "boolean" => expression.Value == "true",
                "identifier" => expression.Value,
                var other => throw new InvalidOperationException($"{other} is not used."),
            };
        }
        if (name == "qti-variable")
            return _variables[Id(expression)];
        if (name == "qti-correct")
            return _correct[Id(expression)];
        if (name == "qti-random-integer")
            return (double)random.Next((int)expression.Attribute("min")!, (int)expression.Attribute("max")! + 1);

        var values = operands.Select(Of).ToList();
        if (values.Contains(null))
            return null;
        double[] numbers = [.. values.OfType<double>()];
        return name switch
        {
            "qti-sum" => numbers.Sum(),
            "qti-product" => numbers.Aggregate(1.0, (product, number) => product * number),
            "qti-subtract" => numbers[0] - numbers[1],
            "qti-divide" => numbers[1] == 0 ? null : numbers[0] / numbers[1],
            "qti-power" => Math.Pow(numbers[0], numbers[1]),
            "qti-min" => numbers.Min(),
            "qti-max" => numbers.Max(),
            "qti-lt" => numbers[0] < numbers[1],
            "qti-lte" => numbers[0] <= numbers[1],
            "qti-gt" => numbers[0] > numbers[1],
            "qti-gte" => numbers[0] >= numbers[1],
            "qti-and" => values.All(value => value is true),
            "qti-or" => values.Any(value => value is true),
            "qti-not" => values[0] is false,
            "qti-math-operator" => (string)expression.Attribute("name")! switch
            {
                "abs" => Math.Abs(numbers[0]),
                "floor" => Math.Floor(numbers[0]),
                "exp" => Math.Exp(numbers[0]),
                "ln" => Math.Log(numbers[0]),
                "log" => Math.Log10(numbers[0]),
                var other => throw new InvalidOperationException($"{other} is no operator of the standard."),
            },
            "qti-match" => Equals(values[0], values[1]),
            "qti-equal" => Equal(expression, numbers[0], numbers[1]),
            _ => throw new InvalidOperationException($"{name} is no expression of the standard."),
        };
    }

    /// <summary>Bounds are included; relative amounts are percent of the first number.</summary>
    private static bool Equal(XElement expression, double first, double second)
    {
        var tolerance = ((string)expression.Attribute("tolerance")!).Split(' ').Select(Number).ToList();
        return (string)expression.Attribute("tolerance-mode")! switch
        {
            "absolute" => second >= first - tolerance[0] && second <= first + tolerance[1],
            "relative" => second >= first * (1 - tolerance[0] / 100) && second <= first * (1 + tolerance[1] / 100),
            var other => throw new InvalidOperationException($"{other} is no tolerance mode."),
        };
    }

    private static IEnumerable<XElement> Children(XElement element, string name) => element.Elements(Space + ("qti-" + name));

    private static string Id(XElement element) => (string)element.Attribute("identifier")!;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
