using Boardwright.Quantities;

namespace Boardwright.Sawing;

/// <summary>The names by which people and files call the log rules.</summary>
public static class LogRules
{
    private static readonly (string Name, LogRule Rule)[] Names =
    [
        ("doyle", LogRule.Doyle), ("scribner", LogRule.Scribner), ("scribner-decimal-c", LogRule.ScribnerDecimalC),
        ("international-quarter", LogRule.InternationalQuarter), ("international-eighth", LogRule.InternationalEighth), ("ontario", LogRule.Ontario),
        ("roy", LogRule.Roy), ("smalian", LogRule.Smalian), ("huber", LogRule.Huber), ("newton", LogRule.Newton),
    ];

    /// <summary>Every name, parted by commas.</summary>
    public static string All { get; } = string.Join(", ", Names.Select(pair => pair.Name));

    /// <summary>The rule a person named, in any case.</summary>
    /// <param name="what">The field or option, for the refusal.</param>
    /// <param name="text">What the person wrote.</param>
    public static Outcome<LogRule> Find(string what, string text)
    {
        foreach (var (name, rule) in Names)
        {
            if (name.Equals(text.Trim(), StringComparison.OrdinalIgnoreCase))
                return rule;
        }

        return new Refusal(what, text, All);
    }

    /// <summary>The name of a rule, as it is written in files and commands.</summary>
    public static string NameOf(LogRule rule) => Names.First(pair => pair.Rule == rule).Name;

    /// <summary>True for the rules that give a solid volume and no board feet.</summary>
    public static bool IsCubic(LogRule rule) => rule is LogRule.Smalian or LogRule.Huber or LogRule.Newton;
}
