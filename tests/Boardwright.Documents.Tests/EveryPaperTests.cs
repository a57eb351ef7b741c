using Boardwright.Documents.Blanks;
using Boardwright.Documents.Kilns;
using Boardwright.Documents.Logs;
using Boardwright.Documents.Packs;
using Boardwright.Documents.Setting;
using Boardwright.Documents.Weeks;
using Boardwright.Testing;

namespace Boardwright.Documents.Tests;

/// <summary>What holds for every paper the shop prints, usual and awkward alike.</summary>
public class EveryPaperTests
{
    private static readonly Dictionary<string, Func<byte[]>> Papers = new(Blank())
    {
        ["tag"] = () => PackTag.Render(Examples.Tag),
        ["tag, half letter"] = () => PackTag.Render(Examples.Tag, Paper.HalfLetter),
        ["tag, wetter than ordered"] = () => PackTag.Render(Examples.WetTag),
        ["tag, wetter than ordered, half letter"] = () => PackTag.Render(Examples.WetTag, Paper.HalfLetter),
        ["tag, two on A4"] = () => PackTag.Render(Examples.BareTag, Paper.A4),
        ["tag, two on letter"] = () => PackTag.Render(Examples.BareTag, Paper.Letter),
        ["tag, long names"] = () => PackTag.Render(Examples.LongTag),
        ["tag, long names, half letter"] = () => PackTag.Render(Examples.LongTag, Paper.HalfLetter),
        ["packing list"] = () => PackingList.Render(PackExamples.List),
        ["packing list, 200 boards and metric"] = () => PackingList.Render(PackExamples.List with { Packs = [PackExamples.Many(200), PackExamples.Metric] }, Paper.Letter),
        ["packing list, long names"] = () => PackingList.Render(PackExamples.LongList),
        ["kiln run sheet"] = () => KilnRunSheet.Render(KilnExamples.Oak),
        ["kiln run sheet, letter"] = () => KilnRunSheet.Render(KilnExamples.Oak, Paper.Letter),
        ["kiln run sheet, vacuum"] = () => KilnRunSheet.Render(KilnExamples.Slabs, Paper.Letter),
        ["kiln run sheet, long names and many samples"] = () => KilnRunSheet.Render(KilnExamples.Long),
        ["cutting sheet, quartersawn"] = () => CuttingSheet.Render(LogExamples.Quartered),
        ["cutting sheet, metal"] = () => CuttingSheet.Render(LogExamples.Metal, Paper.Letter),
        ["week sheet"] = () => WeekSheet.Render(WeekExamples.Week),
        ["week sheet, long names and a full week"] = () => WeekSheet.Render(WeekExamples.Full, Paper.Letter),
        ["cutting sheet, long names"] = () => CuttingSheet.Render(LogExamples.Long),
    };

    private static IEnumerable<KeyValuePair<string, Func<byte[]>>> Blank() =>
    [
        .. BlankForms.All.Select(form => KeyValuePair.Create<string, Func<byte[]>>($"blank {form.Name}", () => BlankPaper.Render(form, Examples.Yard, BlankTests.Made))),
        .. BlankForms.All.Select(form => KeyValuePair.Create<string, Func<byte[]>>($"blank {form.Name}, letter", () => BlankPaper.Render(form, Examples.LongName, BlankTests.Made, Paper.Letter))),
    ];

    public static TheoryData<string> Names { get; } = [.. Papers.Keys];

    [Theory, MemberData(nameof(Names))]
    public void Words_stay_on_the_paper_and_clear_of_each_other(string name)
    {
        var pdf = Papers[name]();
        var pages = Pdf.Pages(pdf);
        var words = Pdf.Words(pdf);

        const double edgePoints = 7.0 * 72.0 / 25.4;
        Assert.DoesNotContain(words, w => w.Left < edgePoints || w.Right > pages[w.Page - 1].Width - edgePoints || w.Top < 0.0 || w.Bottom > pages[w.Page - 1].Height - edgePoints);
        Assert.Empty(words.SelectMany((a, i) => words.Skip(i + 1).Where(b => Overlap(a, b)).Select(b => $"page {a.Page}: {a.Text} | {b.Text}")));
    }

    [Theory, MemberData(nameof(Names))]
    public void Ink_is_black_and_no_shade_is_lost_on_a_one_bit_printer(string name)
    {
        var rgb = Pdf.Draw(Papers[name](), 1, 150).Rgb;

        // Grey may only come from the smoothing of edges.
        var (coloured, grey, dark) = (0, 0, 0);
        for (var i = 0; i < rgb.Length; i += 3)
        {
            coloured += rgb[i] != rgb[i + 1] || rgb[i + 1] != rgb[i + 2] ? 1 : 0;
            grey += rgb[i] is > 60 and < 195 ? 1 : 0;
            dark += rgb[i] <= 60 ? 1 : 0;
        }

        Assert.Equal(0, coloured);
        Assert.InRange(grey, 0, dark);
    }

    /// <summary>Leaves each paper in an ignored folder, for people to look at.</summary>
    [Theory, MemberData(nameof(Names))]
    public void The_same_content_gives_the_same_bytes(string name)
    {
        var pdf = Papers[name]();
        Directory.CreateDirectory(Repository.PathOf("pictures", "papers"));
        File.WriteAllBytes(Repository.PathOf("pictures", "papers", name.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-') + ".pdf"), pdf);

        Assert.Equal(pdf, Papers[name]());
    }

    [Fact]
    public void Papers_made_at_once_are_the_same_as_one_by_one()
    {
        var alone = Papers["kiln run sheet"]();

        Parallel.For(0, 8, _ => Assert.Equal(alone, Papers["kiln run sheet"]()));
    }

    [Fact]
    public void Nothing_is_set_below_nine_points() => Assert.Throws<ArgumentOutOfRangeException>(() => new Lettering().Regular(8.9));

    [Theory]
    [InlineData("a4", 210.0, 297.0)]
    [InlineData("Letter", 215.9, 279.4)]
    public void Sheets_take_the_paper_asked_for(string name, double widthMm, double heightMm)
    {
        var page = Pdf.Pages(CuttingSheet.Render(LogExamples.Quartered, Paper.Find(name)))[0];

        Assert.Equal(widthMm, page.Width * 25.4 / 72.0, 0.2);
        Assert.Equal(heightMm, page.Height * 25.4 / 72.0, 0.2);
    }

    [Fact]
    public void Digits_are_all_of_one_width()
    {
        var words = Pdf.Words(PackTag.Render(Examples.Tag with { Customer = "1111111111 8888888888" }));
        double Width(string text) => words.Where(w => w.Text == text).Select(w => w.Right - w.Left).Single();

        Assert.Equal(Width("8888888888"), Width("1111111111"), 0.01);
    }

    /// <summary>A word's box has room above its capitals and below its descenders: compared is where the ink is.</summary>
    private static bool Overlap(Pdf.Word a, Pdf.Word b)
    {
        if (a.Page != b.Page)
            return false;

        var across = Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left);
        var down = Math.Min(InkBottom(a), InkBottom(b)) - Math.Max(InkTop(a), InkTop(b));
        return across > 0.8 && down > 0.5;
    }

    // The face's box is 0.984 em over and 0.316 em under the baseline; its capitals are 0.668 em tall, descenders 0.22 em.
    private static double InkTop(Pdf.Word word) => word.Top + ((0.984 - 0.70) / 1.30 * (word.Bottom - word.Top));

    private static double InkBottom(Pdf.Word word) =>
        word.Bottom - ((word.Text.Any("gjpqyQ,;/()".Contains) ? 0.316 - 0.22 : 0.316) / 1.30 * (word.Bottom - word.Top));
}
