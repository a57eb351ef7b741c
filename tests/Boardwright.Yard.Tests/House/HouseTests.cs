using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.House;

/// <summary>How a yard is set up, from the first person of an empty book to every figure of the demonstration.</summary>
public sealed partial class HouseTests
{
    private readonly YardBook demonstration = DemonstrationBook.Open();
    private readonly YardBook empty = new(new MemoryBookStore([]), new StandingClock(new(2026, 11, 2, 8, 0, 0)));

    [Fact]
    public void Empty_yard_names_all_it_needs_and_the_demonstration_nothing()
    {
        Assert.Equal(["people", "yard", "places", "kilns", "work-days", "boilers", "normals", "prices"], HouseSheet.Of(empty.State).Needed.Select(table => table.Name));
        Assert.Equal(["Before the first log", "Before the first log", "Before the first stack", "Before the first charge"], HouseSheet.Of(empty.State).Needed.Take(4).Select(table => table.Before));
        Assert.All(HouseTable.All, table => Assert.NotEmpty(table.Before));
        Assert.Empty(HouseSheet.Of(demonstration.State).Needed);
    }

    [Fact]
    public void Every_row_of_the_demonstration_fills_its_form_and_written_again_is_the_same_fact()
    {
        var house = HouseSheet.Of(demonstration.State);
        var rows = house.Lists.SelectMany(list => list.Rows.Select(row => (list.Table, row.Name, row.Entry)))
            .Concat(house.Figures.SelectMany(group => group.Values).Where(value => value.Entry is not null).Select(value => (HouseTable.All[^1], value.Name, Entry: value.Entry!))).ToList();
        Assert.True(rows.Count > 150, $"{rows.Count} rows");

        foreach (var (table, name, entry) in rows)
        {
            var form = Assert.IsType<Outcome<HouseForm>.Done>(HouseForm.Of(demonstration.State, table.Name, name)).Value;
            var written = Write(demonstration, table.Name, form.Fields.ToDictionary(field => field.Column.Column, field => field.Text), "Oda");
            Assert.Equal(BookJson.Line(entry.Fact), BookJson.Line(Assert.Single(written).Fact));
        }
    }

    [Fact]
    public void First_person_signs_for_himself_and_before_him_nobody_can()
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(HouseForm.Write(empty, "places", new Dictionary<string, string> { ["place"] = "shed", ["type"] = "shed" }, null, PostedKey.None));
        Assert.Contains(refused.Reasons, reason => reason.What == "Who" && reason.Accepted.Contains("nobody is written in yet", StringComparison.Ordinal));

        Write(empty, "people", new() { ["person"] = "Ann", ["role"] = "owner", ["paid_per_hour_money"] = "30" }, null);
        Write(empty, "places", new() { ["place"] = "shed", ["type"] = "shed" }, "Ann");

        Assert.Equal("Ann", empty.State.Entries[0].By);
        Assert.Equal(PlaceKind.Shed, empty.State.Places["shed"].Type);
    }

    [Fact]
    public void Figure_changed_is_reckoned_with_and_the_old_one_stays_in_the_book()
    {
        var before = demonstration.State.Settings["electricity"];

        Write(demonstration, "settings", new() { ["name"] = "electricity", ["value"] = "0.22", ["unit"] = "money/kWh" }, "Oda");

        Assert.Equal(0.22, demonstration.State.Setting("electricity"));
        Assert.Equal(before.Value, Assert.IsType<SettingSet>(demonstration.State.Entry(before.Entry).Fact).Value);
    }

    [Theory]
    [InlineData("electricty", "money/kWh", "Name in the book", "electricity")]
    [InlineData("electricity", "cents/kWh", "Unit", "money/kWh")]
    public void Figure_nothing_asks_for_and_another_unit_are_refused(string name, string unit, string what, string accepted)
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(
            HouseForm.Write(demonstration, "settings", new Dictionary<string, string> { ["name"] = name, ["value"] = "0.2", ["unit"] = unit }, "Oda", PostedKey.None));

        var reason = Assert.Single(refused.Reasons);
        Assert.Equal(what, reason.What);
        Assert.Contains(accepted, reason.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_wrong_field_of_a_kiln_is_named_by_its_label()
    {
        var refused = Assert.IsType<Outcome<IReadOnlyList<Entry>>.Refused>(HouseForm.Write(demonstration, "kilns",
            new Dictionary<string, string> { ["kiln"] = "K4", ["type"] = "conventional", ["capacity_44_bf"] = "many", ["max_piece"] = "16", ["max_dry_bulb"] = "160 F" }, "Oda", PostedKey.None));

        var labels = refused.Reasons.Select(reason => reason.What).ToList();
        Assert.Contains("Room", labels);
        Assert.Contains("Longest piece", labels);
        Assert.DoesNotContain("Hottest air it reaches (dry bulb)", labels);
        Assert.False(demonstration.State.Kilns.ContainsKey("K4"));
    }

    [Fact]
    public void Every_figure_of_the_demonstration_is_one_the_house_knows_in_its_unit() => Assert.All(demonstration.State.Settings.Values, setting =>
    {
        var figure = HouseFigure.Of(setting.Name);
        Assert.True(figure is not null, setting.Name);
        Assert.Equal(figure!.Unit, setting.Unit);
    });

    [Fact]
    public void What_the_program_asks_for_is_on_the_list_with_the_value_it_takes_where_nobody_set_it()
    {
        var asked = Directory.EnumerateFiles(Repository.PathOf("src", "Boardwright.Yard"), "*.cs", SearchOption.AllDirectories)
            .SelectMany(path => AskedFor().Matches(File.ReadAllText(path))).ToList();
        Assert.True(asked.Count > 50, $"{asked.Count} found");

        Assert.All(asked, found =>
        {
            var figure = HouseFigure.Of(found.Groups["name"].Value);
            Assert.True(figure is not null, found.Value);
            if (double.TryParse(found.Groups["usual"].Value, CultureInfo.InvariantCulture, out var usual))
                Assert.Equal(usual, figure!.Usual ?? 0.0);
        });
    }

    [Theory]
    [InlineData("house_green_5_4", "Saw 5/4 this thick")]
    [InlineData("slab_dry_black_walnut", "Slab, dry, black walnut")]
    [InlineData("grade_share_fas_16_to_21_in", "Share of grade fas, small end 16 to 21 in")]
    public void Figures_of_many_woods_are_said_by_their_names(string name, string words) => Assert.Equal(words, HouseFigure.Of(name)!.Said(name));

    private static IReadOnlyList<Entry> Write(YardBook book, string table, Dictionary<string, string> values, string? by) =>
        Assert.IsType<Outcome<IReadOnlyList<Entry>>.Done>(HouseForm.Write(book, table, values, by, PostedKey.None)).Value;

    [GeneratedRegex("""[sS]etting\("(?<name>[a-z0-9_]+)"\)(?: \?\? (?<usual>[0-9.]+))?""")]
    private static partial Regex AskedFor();
}
