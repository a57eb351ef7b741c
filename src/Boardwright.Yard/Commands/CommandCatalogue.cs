using System.Reflection;

namespace Boardwright.Yard.Commands;

/// <summary>Every command of the program: each use case that shows a public static <c>Command</c> property.</summary>
public static class CommandCatalogue
{
    private static readonly Lazy<IReadOnlyList<Command>> Found = new(() =>
        [.. typeof(CommandCatalogue).Assembly.GetExportedTypes()
            .Select(type => type.GetProperty("Command", BindingFlags.Public | BindingFlags.Static))
            .Where(property => property?.PropertyType == typeof(Command))
            .Select(property => (Command)property!.GetValue(null)!)
            .OrderBy(command => command.Words, StringComparer.Ordinal)]);

    private static readonly Lazy<Dictionary<string, Command>> ByWords = new(() => Found.Value.ToDictionary(command => command.Words, StringComparer.Ordinal));

    public static IReadOnlyList<Command> All => Found.Value;

    public static Command? Find(string words) => ByWords.Value.GetValueOrDefault(words);
}
