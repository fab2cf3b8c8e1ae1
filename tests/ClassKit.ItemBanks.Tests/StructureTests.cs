using System.Text.RegularExpressions;
using System.Xml.Linq;
using ClassKit.ItemBanks.Packages;
using ClassKit.ItemBanks.Tests.Support;
using ClassKit.Tests.Exercises;

namespace ClassKit.ItemBanks.Tests;

/// <summary>
/// The rules of 1EdTech QTI 3.0 for items and packages. Its schemas are in no registry that we restore from, so the rules stand here, from
/// memory of the Assessment, Section and Item information model and its XML binding.
/// </summary>
public sealed partial class StructureTests
{
    private static readonly XNamespace Space = "http://www.imsglobal.org/xsd/imsqtiasi_v3p0";
    private static readonly XNamespace Packaging = "http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1";

    /// <summary>The order of an item's children in the binding.</summary>
    private static readonly string[] Order =
    [
        "qti-response-declaration",
        "qti-outcome-declaration",
        "qti-template-declaration",
        "qti-template-processing",
        "qti-item-body",
        "qti-response-processing",
        "qti-modal-feedback",
    ];

    /// <summary>The attributes that an element must have, and those that it may have behind the bar.</summary>
    private static readonly Dictionary<string, string> Attributes = new()
    {
        ["qti-assessment-item"] = "identifier title time-dependent|adaptive lang",
        ["qti-response-declaration"] = "identifier cardinality|base-type",
        ["qti-outcome-declaration"] = "identifier cardinality|base-type normal-minimum normal-maximum external-scored",
        ["qti-template-declaration"] = "identifier cardinality|base-type",
        ["qti-text-entry-interaction"] = "response-identifier|expected-length",
        ["qti-extended-text-interaction"] = "response-identifier|expected-lines format",
        ["qti-rubric-block"] = "view|use",
        ["qti-choice-interaction"] = "response-identifier max-choices|shuffle min-choices",
        ["qti-simple-choice"] = "identifier|",
        ["qti-printed-variable"] = "identifier|format",
        ["qti-base-value"] = "base-type|",
        ["qti-variable"] = "identifier|",
        ["qti-correct"] = "identifier|",
        ["qti-equal"] = "tolerance-mode|tolerance",
        ["qti-math-operator"] = "name|",
        ["qti-random-integer"] = "max|min step",
        ["qti-set-template-value"] = "identifier|",
        ["qti-set-correct-response"] = "identifier|",
        ["qti-set-outcome-value"] = "identifier|",
        ["qti-modal-feedback"] = "outcome-identifier show-hide identifier|",
    };

    private static readonly string[] Bare =
    [
        "qti-correct-response",
        "qti-default-value",
        "qti-value",
        "qti-template-processing",
        "qti-template-constraint",
        "qti-item-body",
        "qti-content-body",
        "qti-response-processing",
        "qti-response-condition",
        "qti-response-if",
        "qti-response-else-if",
        "qti-sum",
        "qti-product",
        "qti-subtract",
        "qti-divide",
        "qti-power",
        "qti-min",
        "qti-max",
        "qti-and",
        "qti-or",
        "qti-not",
        "qti-match",
        "qti-prompt",
        "qti-lt",
        "qti-lte",
        "qti-gt",
        "qti-gte",
    ];

    private static readonly string[] Html =
    [
        "div",
        "p",
        "span",
        "em",
        "strong",
        "code",
        "ul",
        "ol",
        "li",
        "br",
        "table",
        "caption",
        "thead",
        "tbody",
        "tr",
        "th",
        "td",
    ];

    public static TheoryData<bool> Kinds => [false, true];

    private static ItemBank Make(bool asTemplates) =>
        asTemplates
            ? ItemBank.OfTemplates("one-tin", ShippedExercises.All, 2, 7)
            : ItemBank.OfVariants("one-tin", ShippedExercises.All, 2, 7);

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Items_are_put_together_in_the_standards_order_of_elements_that_it_knows(bool asTemplates) =>
        Assert.All(new OpenedBank(Make(asTemplates)).Items, entry =>
        {
            var item = entry.Value;
            Assert.Equal(Space + "qti-assessment-item", item.Name);
            Assert.Equal(entry.Key, (string?)item.Attribute("identifier"));
            var places = item.Elements().Select(element => Array.IndexOf(Order, element.Name.LocalName)).ToList();
            Assert.DoesNotContain(-1, places);
            Assert.Equal(places.Order(), places);
            foreach (var element in item.DescendantsAndSelf())
            {
                Assert.Equal(Space, element.Name.Namespace);
                var name = element.Name.LocalName;
                if (Html.Contains(name))
                    continue;
                var has = element
                    .Attributes()
                    .Where(attribute => !attribute.IsNamespaceDeclaration)
                    .Select(attribute => attribute.Name.LocalName)
                    .ToList();
                if (Bare.Contains(name))
                {
                    Assert.Empty(has);
                    continue;
                }
                Assert.True(Attributes.TryGetValue(name, out var known), $"{name} is no element that we know of");
                var (must, may) = (known.Split('|')[0].Split(' '), known.Split('|')[1].Split(' '));
                Assert.Subset(must.Concat(may).ToHashSet(), has.ToHashSet());
                Assert.Superset(must.ToHashSet(), has.ToHashSet());
            }
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_variable_that_is_used_is_declared_once(bool asTemplates) =>
        Assert.All(new OpenedBank(Make(asTemplates)).Items.Values, item =>
        {
            var declared = item.Elements()
                .Where(element => element.Name.LocalName.EndsWith("-declaration", StringComparison.Ordinal))
                .Select(Identifier)
                .ToList();
            Assert.Equal(declared.Distinct(StringComparer.Ordinal), declared);
            Assert.All(declared, identifier => Assert.Matches(Identifiers(), identifier));
            var used = item.Descendants()
                .Where(element =>
                    element.Name.LocalName
                        is "qti-variable"
                            or "qti-correct"
                            or "qti-printed-variable"
                            or "qti-set-template-value"
                            or "qti-set-correct-response"
                            or "qti-set-outcome-value"
                )
                .Select(Identifier)
                .Concat(item.Descendants().Where(IsInteraction).Select(field => (string)field.Attribute("response-identifier")!))
                .Concat(
                    item.Descendants(Space + "qti-modal-feedback").Select(feedback => (string)feedback.Attribute("outcome-identifier")!)
                );
            Assert.Subset(declared.ToHashSet(), used.ToHashSet());
            Assert.Equal(item.Elements(Space + "qti-response-declaration").Count(), item.Descendants().Count(IsInteraction));
            Assert.DoesNotContain('\uE000', item.Value);
            Assert.DoesNotContain('{', item.Element(Space + "qti-item-body")!.Value);
        });

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_manifest_lists_every_file_and_no_other(bool asTemplates)
    {
        var opened = new OpenedBank(Make(asTemplates));
        Assert.Equal(Packaging + "manifest", opened.Manifest.Name);
        Assert.Equal("QTI Package", opened.Manifest.Descendants(Packaging + "schema").Single().Value);
        Assert.Equal("3.0.0", opened.Manifest.Descendants(Packaging + "schemaversion").Single().Value);
        var resources = opened.Manifest.Descendants(Packaging + "resource").ToList();
        Assert.All(resources, resource => Assert.Equal("imsqti_item_xmlv3p0", (string?)resource.Attribute("type")));
        Assert.All(resources, resource =>
            Assert.Equal((string?)resource.Attribute("href"), (string?)resource.Element(Packaging + "file")!.Attribute("href"))
        );
        Assert.Equal(resources.Count, resources.Select(Identifier).Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(
            opened.Files.Keys.Where(file => file != "imsmanifest.xml").Order(StringComparer.Ordinal),
            resources.Select(resource => (string)resource.Attribute("href")!).Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_others()
    {
        Assert.Equal(Make(false).Package, Make(false).Package);
        Assert.NotEqual(Make(false).Package, ItemBank.OfVariants("one-tin", ShippedExercises.All, 2, 8).Package);
    }

    private static bool IsInteraction(XElement element) =>
        element.Name == Space + "qti-text-entry-interaction"
        || element.Name == Space + "qti-choice-interaction"
        || element.Name == Space + "qti-extended-text-interaction";

    private static string Identifier(XElement element) => (string)element.Attribute("identifier")!;

    [GeneratedRegex("^[A-Za-z_][A-Za-z0-9_.-]*$")]
    private static partial Regex Identifiers();
}
