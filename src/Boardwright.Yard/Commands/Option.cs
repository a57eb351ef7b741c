namespace Boardwright.Yard.Commands;

/// <summary>One option of a command. The one definition feeds reading, refusals, help and the API.</summary>
/// <param name="Name">Long name without dashes, such as dry-bulb.</param>
/// <param name="Value">What stands for the value in help, such as T; empty for a flag.</param>
/// <param name="Help">One line for a person, with the default where there is one.</param>
public sealed record Option(string Name, string Value, string Help)
{
    /// <summary>The command refuses to run without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>May be given more than once.</summary>
    public bool Repeats { get; init; }

    /// <summary>Stands alone, without a value.</summary>
    public bool IsFlag => Value.Length == 0;

    public static Option Required(string name, string value, string help) => new(name, value, help) { IsRequired = true };

    public static Option Optional(string name, string value, string help) => new(name, value, help);

    public static Option Many(string name, string value, string help) => new(name, value, help) { Repeats = true };

    public static Option Flag(string name, string help) => new(name, "", help);
}
