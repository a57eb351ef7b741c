using Boardwright.Quantities;
using Boardwright.Testing;
using Boardwright.Yard.Book;
using Boardwright.Yard.UseCases;

namespace Boardwright.Yard.Tests.Ask;

/// <summary>The quick questions: the same figures as their commands, every one with its method, faults named by the field.</summary>
public sealed class QuickQuestionTests
{
    private static readonly YardState Yard = DemonstrationBook.Yard;

    [Fact]
    public void Every_question_answers_with_what_stands_in_its_fields_and_names_an_existing_method()
    {
        foreach (var question in QuickQuestions.All)
        {
            var typed = question.Fields.ToDictionary(field => field.Option, field => field.Option switch
            {
                "species" => "northern red oak",
                "rh" or "reading" => "40",
                _ => field.Usual,
            });
            if (question.Key == "meter")
                typed["reading"] = "14";
            var answer = Done(question.Answer(Yard, typed));

            Assert.NotEmpty(answer.Figures);
            Assert.All(answer.Figures, figure => Assert.NotNull(figure.Method));
            Assert.True(File.Exists(Repository.PathOf("docs", "methods", question.Method + ".md")), question.Method);
        }

        Assert.Equal(QuickQuestions.All.Count, QuickQuestions.All.Select(question => question.Key).Distinct().Count());
        Assert.Equal("air", QuickQuestions.Of("moonlight").Key);
    }

    [Fact]
    public void Air_of_110_over_106_holds_what_the_printed_table_says()
    {
        // Table 1-6 of the Dry Kiln Operator's Manual: 17.5 % (from memory of the source).
        var figure = Ask("air", ("dry-bulb", "110"), ("wet-bulb", "106")).Figures[0];

        Assert.Equal(("%", "emc"), (figure.Unit, figure.Method));
        Assert.Equal(17.5, double.Parse(figure.Value, System.Globalization.CultureInfo.InvariantCulture), 0.3);
    }

    [Fact]
    public void Board_shrinks_by_the_figure_of_the_command()
    {
        var command = Answers.Json("wood shrink --species \"black cherry\" --size 8in --from 12% --to 7%").Number("change_mm");
        var figure = Ask("shrink", ("species", "black cherry"), ("size", "8"), ("from", "12"), ("to", "7"), ("grain", "flat")).Figures[0];

        Assert.Equal("It shrinks by", figure.Label);
        Assert.Equal(-command / 25.4, double.Parse(figure.Value, System.Globalization.CultureInfo.InvariantCulture), 5e-4);
        Assert.Equal("It grows by", Ask("shrink", ("species", "black cherry"), ("size", "200mm"), ("from", "7"), ("to", "12"), ("grain", "quarter")).Figures[0].Label);
    }

    [Fact]
    public void Reading_above_the_range_has_no_figure()
    {
        Assert.Equal("above range", Ask("meter", ("reading", "45"), ("temperature", "68"), ("species", "black cherry")).Figures[0].Value);
        Assert.NotEqual("above range", Ask("meter", ("reading", "13.6"), ("temperature", "42"), ("species", "black cherry")).Figures[0].Value);
    }

    [Fact]
    public void Heating_stands_beside_the_printed_times_of_its_wood_and_the_printed_holds()
    {
        // Red oak 2 by 6 in, saturated: printed 49 min, 53 at the 99 % bound (Wood Handbook, table 20-4).
        var answer = Ask("heat", ("species", "northern red oak"), ("thickness", "2"), ("width", "6"), ("initial", "60"), ("core", "133"), ("medium", "157"), ("wet-bulb-depression", "0"), ("against", "pests"));
        var printed = answer.Tables[0].Rows.Single(row => row[0] == "2 × 6" && row[1] == "0");

        Assert.Equal("49 / 53", printed[2]);
        Assert.Equal(48.0, double.Parse(printed[3].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 2.0);
        Assert.Contains(answer.Tables[1].Rows, row => row[0] == "pests" && row[2] == "30 min");
        Assert.Contains("accredited", answer.Caution!.Value.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Fault_names_the_field_and_what_is_accepted()
    {
        var reason = Assert.Single(Refused("meter", ("reading", "much"), ("temperature", "68"), ("species", "black cherry")));
        Assert.Equal(("The meter shows", "much"), (reason.What, reason.Given));
        Assert.Equal("Width of the face now", Assert.Single(Refused("shrink", ("species", "black cherry"), ("from", "12"), ("to", "7"))).What);
        Assert.IsType<Outcome<QuickAnswer>.NoAnswer>(QuickQuestions.Of("rate").Answer(Yard, new Dictionary<string, string> { ["species"] = "hackberry", ["thickness"] = "4/4" }));
    }

    [Fact]
    public void Air_of_the_yard_today_stands_there_without_a_question()
    {
        var here = QuickQuestions.Of("air").Known(Yard)!;

        Assert.Equal("The yard today", here.Figures[0].Label);
        Assert.All(here.Figures, figure => Assert.InRange(double.Parse(figure.Value, System.Globalization.CultureInfo.InvariantCulture), 3.0, 28.0));
        Assert.Null(QuickQuestions.Of("air").Known(YardState.Of([], new(2026, 11, 2))));
    }

    private static QuickAnswer Ask(string key, params (string Option, string Text)[] typed) => Done(QuickQuestions.Of(key).Answer(Yard, typed.ToDictionary(one => one.Option, one => one.Text)));

    private static IReadOnlyList<Refusal> Refused(string key, params (string Option, string Text)[] typed) =>
        Assert.IsType<Outcome<QuickAnswer>.Refused>(QuickQuestions.Of(key).Answer(Yard, typed.ToDictionary(one => one.Option, one => one.Text))).Reasons;

    private static QuickAnswer Done(Outcome<QuickAnswer> outcome) => outcome is Outcome<QuickAnswer>.Done(var answer) ? answer
        : throw new Xunit.Sdk.XunitException(outcome is Outcome<QuickAnswer>.Refused(var reasons) ? string.Join("; ", reasons) : $"{outcome}");
}
