namespace Boardwright.Documents.Kilns;

/// <summary>The usual cautions for going into a kiln, printed on every run sheet.</summary>
/// <remarks>
/// Doors secured, escape door, passage, not from heat into cold air, struck-by injuries: sources osha-1910-265, wac-296-78, sawmill-safety-kiln
/// (mark P). Never alone, fans locked out, scalding air: mark M. Radio frequency: niosh-80-107, ilo-osh-71 (mark P); vessel as a confined
/// space: mark M; metal arcing: mark C.
/// </remarks>
internal static class KilnCautions
{
    public static IReadOnlyList<string> Air { get; } =
    [
        "Not alone. Somebody outside knows that you are in and when you come out.",
        "Fans off and locked out, heat and spray shut, before a door is passed. Hot air at a high wet bulb scalds.",
        "Main doors held open and secured. Try the escape door from inside first. Keep the way beside the load free.",
        "Look up and along the load for loose boards, stickers and weights before walking beside it.",
        "Do not go from a hot kiln straight into frost: ten minutes in a heated room first.",
    ];

    public static IReadOnlyList<string> Vacuum { get; } =
    [
        "Radio frequency off, locked out and earthed before the vessel is opened. Shields and interlocks stay as they are.",
        "The vessel is a confined space: aired, door secured open, a second person outside.",
        "The door is heavy and the vessel must be at the pressure of the air before it is unlatched.",
        "No metal with the wood: nails and staples arc. Keep away while it runs: stray fields heat without being felt.",
    ];

    public const string Deference = "These are reminders, not a procedure: the kiln maker's instructions and the local rules decide.";

    public static IReadOnlyList<string> For(KilnSetting setting) => setting is KilnSetting.Vacuum ? Vacuum : Air;
}
