using System.Text.RegularExpressions;
using Boardwright.Testing;

namespace Boardwright.Yard.Tests.Demo;

/// <summary>Dates of the demonstration move with the day it is opened on; a month or season written in words would stay behind.</summary>
public sealed partial class MovedWordsTests
{
    [Fact]
    public void No_word_of_the_demonstration_names_a_month_or_a_season()
    {
        var files = Directory.EnumerateFiles(DemonstrationBook.Folder, "*.csv").Append(Path.Combine(DemonstrationBook.Folder, "season.jsonl"));

        Assert.Empty(files.SelectMany(file => Named().Matches(File.ReadAllText(file)).Select(match => $"{Path.GetFileName(file)}: {match.Value}")));
    }

    [GeneratedRegex(@"\b(January|February|March|April|June|July|August|September|October|November|December|in spring|in summer|in autumn|this winter)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Named();
}
