using System.Text.Json;

namespace Boardwright.Cli.Tests;

public sealed class TerminalTests
{
    [Theory]
    [InlineData("")]
    [InlineData("--help")]
    [InlineData("air --help")]
    [InlineData("batch --help")]
    public void Help_is_there_at_every_level(string words)
    {
        var (exit, output, error) = Terminals.Line(words);

        Assert.Equal(ExitCode.Done, exit);
        Assert.Contains("Example:", output, StringComparison.Ordinal);
        Assert.Empty(error);
    }

    [Fact]
    public void Version_is_printed() => Assert.Matches("^boardwright \\d+\\.\\d+\\.\\d+", Terminals.Line("--version").Output);

    [Theory]
    [InlineData("air")]
    [InlineData("air stat")]
    [InlineData("moon phase")]
    [InlineData("moon --help")]
    public void An_unknown_command_is_refused_with_the_ones_there_are(string words)
    {
        var (exit, output, error) = Terminals.Line(words);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Empty(output);
        Assert.Contains("accepted", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("air stat", "air state?")]
    [InlineData("lgo scale", "log scale?")]
    [InlineData("mositure lot", "moisture lot?")]
    [InlineData("verfy", "verify?")]
    [InlineData("sevre", "serve?")]
    [InlineData("serve --plan-work 0", "a share of the usual work, 0.05 to 10")]
    [InlineData("air state --dry-bulp 20C --rh 50%", "--dry-bulb, or another")]
    public void A_mistyped_word_is_refused_with_the_nearest_one(string words, string nearest)
    {
        var (exit, _, error) = Terminals.Line(words);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Contains($"accepted: {nearest}", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("air state --dry-bulb 20 --rh 65%", "--dry-bulb", "\"20\"")]
    [InlineData("air state --dry-bulb 20C", "--rh", "nothing")]
    [InlineData("air state --rh 65%", "--dry-bulb", "nothing")]
    [InlineData("air state --dry-bulb 20C --rh", "--rh", "nothing after it")]
    [InlineData("air state --dry-bulb 20C --rh 65% --wet-bulb 15C", "--rh", "exactly one")]
    [InlineData("air state --dry-bulb 20C --dry-bulb 21C --rh 65%", "--dry-bulb", "21C")]
    [InlineData("air state 20C", "air state", "20C")]
    public void A_refused_input_names_the_option_what_was_given_and_what_is_accepted(string words, string option, string part)
    {
        var (exit, output, error) = Terminals.Line(words);

        Assert.Equal(ExitCode.Refused, exit);
        Assert.Empty(output);
        Assert.Contains(option, error, StringComparison.Ordinal);
        Assert.Contains(part, error, StringComparison.Ordinal);
        Assert.Contains("accepted", error, StringComparison.Ordinal);
    }

    // The contract: nothing on standard output, one line of text on standard error, with --json too.
    [Fact]
    public void An_unknown_option_is_named_as_one_and_a_refusal_is_one_line_with_json_too()
    {
        var (code, output, error) = Terminals.Line("log worth --species plastic --small-end 26in --length 8ft --json");

        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith("option of log worth: given \"--species\"; accepted: ", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_long_curve_does_not_push_the_answer_off_the_screen()
    {
        string[] words = ["dry", "air", "--species", "sugar maple", "--thickness", "4/4", "--from", "68%", "--to", "20%", "--start", "2026-05-01", "--place", "demonstration"];
        var lines = Terminals.Run(words).Output.TrimEnd().Split('\n');

        Assert.InRange(lines.Length, 10, 24);
        Assert.Contains(lines, line => line.StartsWith("curve (one row in ", StringComparison.Ordinal) && line.Contains("all with --json", StringComparison.Ordinal));
        Assert.True(System.Text.Json.JsonDocument.Parse(Terminals.Run([.. words, "--json"]).Output).RootElement.GetProperty("curve").GetArrayLength() > 24);
    }

    [Fact]
    public void Costs_of_a_history_have_a_name_each()
    {
        var words = Terminals.Line("log history L-039 --yard demonstration").Output.Split('\n').Select(line => line.Split("  ")[0]).Where(name => name.Length > 0).ToList();

        Assert.Equal(words.Distinct(), words);
        Assert.Contains("cost in all", words);
    }

    [Fact]
    public void Batch_answers_each_line_in_order_and_a_bad_line_does_not_stop_the_rest()
    {
        const string Lines = """
            air state --dry-bulb 20C --rh 65%
            air state --dry-bulb 20 --rh 65%
            # a remark

            log scale --rule roy --small-end 12in --length 8ft
            air state --dry-bulb 'twenty
            air state --dry-bulb "68 F" --rh 50%
            """;

        var (exit, output, _) = Terminals.Run(["batch"], Lines);

        var answers = output.TrimEnd().Split('\n').Select(line => JsonDocument.Parse(line).RootElement).ToList();
        Assert.Equal(ExitCode.Done, exit);
        Assert.Equal([true, false, false, false, true], answers.Select(answer => answer.GetProperty("ok").GetBoolean()));
        Assert.InRange(answers[0].GetProperty("result").GetProperty("emc_pct").GetDouble(), 11.9, 12.1);
        Assert.Equal(2, answers[1].GetProperty("exit").GetInt32());
        Assert.Contains("--dry-bulb", answers[1].GetProperty("error").GetString(), StringComparison.Ordinal);
    }
}
