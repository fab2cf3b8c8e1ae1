using ClassKit.Pages.Layout;
using ClassKit.Wording.Outcomes;

namespace ClassKit.Pages.Tests.Colours;

/// <summary>Outcomes have the same colours on pages as in workbooks, which take theirs from <see cref="OutcomeTones"/>.</summary>
public sealed class OutcomeToneTests
{
    [Fact]
    public void Every_tone_is_a_surface_of_light_pages_and_has_its_rules() => Assert.All(Enum.GetValues<OutcomeTone>(), tone =>
        {
            Assert.Equal(Palette.Light[$"--surface-{OutcomeTones.Name(tone)}"], OutcomeTones.Ground(tone));
            Assert.Contains($".outcome.tone-{OutcomeTones.Name(tone)} ", Stylesheet.Text, StringComparison.Ordinal);
            Assert.Contains($".part-mark.tone-{OutcomeTones.Name(tone)} ", Stylesheet.Text, StringComparison.Ordinal);
        });
}
