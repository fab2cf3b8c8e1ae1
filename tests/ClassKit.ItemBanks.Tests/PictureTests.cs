using ClassKit.Exercises.Authoring;
using ClassKit.ItemBanks.Packages;
using ClassKit.ItemBanks.Tests.Support;
using ClassKit.Tests.Exercises;

namespace ClassKit.ItemBanks.Tests;

/// <summary>
/// An exercise's picture goes along with its items: an image of HTML in the body, with its words; the file once in the package, as web
/// content on which the items say that they depend (1EdTech Content Packaging 1.2, from memory).
/// </summary>
public sealed class PictureTests
{
    private static readonly byte[] Bytes = [0x89, 0x50, 0x4E, 0x47, 1, 2, 3, 255];

    private static readonly IReadOnlyList<Exercise> Exercises =
    [
        ShippedExercises.All[0] with
        {
            Picture = new("tin.png", "A tin \"of\" scones & a ruler", "data:image/png;base64," + Convert.ToBase64String(Bytes)),
        },
        ShippedExercises.All[1],
    ];

    public static TheoryData<bool> Kinds => [false, true];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void It_stands_in_the_body_and_lies_in_the_package_once(bool asTemplates)
    {
        var bank = new OpenedBank(
            asTemplates ? ItemBank.OfTemplates("bank", Exercises, 3, 7) : ItemBank.OfVariants("bank", Exercises, 3, 7)
        );
        var (pictured, plain) = (Exercises[0].Id, Exercises[1].Id);

        Assert.Equal(Bytes, bank.Pictures[$"images/{pictured}.png"]);
        Assert.Single(bank.Pictures);
        foreach (var (name, item) in bank.Items)
        {
            var images = item.Descendants()
                .Where(element => element.Name.LocalName == "img")
                .Select(image => ((string?)image.Attribute("src"), (string?)image.Attribute("alt")))
                .ToList();
            if (name.StartsWith(plain, StringComparison.Ordinal))
                Assert.Empty(images);
            else
                Assert.Equal(($"../images/{pictured}.png", "A tin \"of\" scones & a ruler"), Assert.Single(images));
        }
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_manifest_lists_every_file_and_says_which_items_need_it(bool asTemplates)
    {
        var bank = new OpenedBank(
            asTemplates ? ItemBank.OfTemplates("bank", Exercises, 3, 7) : ItemBank.OfVariants("bank", Exercises, 3, 7)
        );
        var resources = bank.Manifest.Descendants().Where(element => element.Name.LocalName == "resource").ToList();

        Assert.Equal(
            bank.Files.Keys.Concat(bank.Pictures.Keys).Where(file => file != "imsmanifest.xml").Order(StringComparer.Ordinal),
            resources
                .SelectMany(resource => resource.Elements().Where(element => element.Name.LocalName == "file"))
                .Select(file => (string)file.Attribute("href")!)
                .Order(StringComparer.Ordinal)
        );
        var picture = resources.Single(resource => (string?)resource.Attribute("type") == "webcontent");
        Assert.All(resources.Where(resource => resource != picture), resource =>
            Assert.Equal(
                ((string)resource.Attribute("href")!).StartsWith("items/" + Exercises[0].Id, StringComparison.Ordinal)
                    ? [(string?)picture.Attribute("identifier")]
                    : [],
                resource
                    .Elements()
                    .Where(element => element.Name.LocalName == "dependency")
                    .Select(dependency => (string?)dependency.Attribute("identifierref"))
            )
        );
    }
}
