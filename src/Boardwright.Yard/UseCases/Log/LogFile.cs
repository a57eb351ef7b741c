using System.Globalization;
using System.Text.Json;
using Boardwright.Quantities;
using Boardwright.Sawing;
using Boardwright.Wood;

namespace Boardwright.Yard.UseCases;

/// <summary>A log as written in a file: two ends and a length, or measured sections.</summary>
internal sealed record LogFile
{
    public const string Keys = "species small_end_mm large_end_mm length_m sweep_mm rot_mm metal, or sections:[{at_m diameter_x_mm diameter_y_mm offset_x_mm offset_y_mm, or radii_mm:[eight or more all round, the first upright, then clockwise]}] from the small end";

    /// <summary>What it is called among others.</summary>
    public string? Name { get; init; }

    public string? Species { get; init; }

    public double? SmallEndMm { get; init; }

    public double? LargeEndMm { get; init; }

    public double? LengthM { get; init; }

    public double? SweepMm { get; init; }

    public double? RotMm { get; init; }

    public JsonElement? Metal { get; init; }

    public IReadOnlyList<SectionFile>? Sections { get; init; }

    /// <summary>Said when only one end was measured.</summary>
    public string? Assumed => Sections is null && LargeEndMm is null && SmallEndMm is { } small && LengthM is { } length
        ? string.Create(CultureInfo.InvariantCulture, $"large end {TaperedMm(small, length):0} mm: small end + 1/8 in per foot of length")
        : null;

    /// <summary>The file names metal, or says the log was not scanned.</summary>
    public bool NamesMetal => Metal is { } metal && metal.ValueKind switch
    {
        JsonValueKind.Null or JsonValueKind.False => false,
        JsonValueKind.String => metal.GetString() is { Length: > 0 } text && !text.Equals("clear", StringComparison.OrdinalIgnoreCase) && !text.Equals("none", StringComparison.OrdinalIgnoreCase),
        JsonValueKind.Array => metal.GetArrayLength() > 0,
        _ => true,
    };

    public Outcome<Species?> KnownSpecies() => Species is { Length: > 0 } name
        ? SpeciesTable.Find("FILE, species", name).Then(species => new Outcome<Species?>.Done(species))
        : new Outcome<Species?>.Done(null);

    public Outcome<LogShape> Shape() => Named(Size("sweep_mm", SweepMm ?? 0.0).Then(sweep => Size("rot_mm", RotMm ?? 0.0).Then(rot => Sections is { } sections
        ? Measured(sections).Then(read => LogShape.Measured(read, sweep, rot))
        : Size("small_end_mm", SmallEndMm).Then(small => Size("length_m", LengthM * 1000.0).Then(length =>
            Size("large_end_mm", LargeEndMm ?? TaperedMm(small.Millimetres, length.Metres)).Then(large => LogShape.Straight(small, large, length, sweep, rot)))))));

    private static double TaperedMm(double smallMm, double lengthM) => smallMm + (LogScale.AssumedTaperInPerFt * 25.4 * lengthM / 0.3048);

    private static Outcome<IReadOnlyList<LogSection>> Measured(IReadOnlyList<SectionFile> sections)
    {
        var read = new List<LogSection>();
        foreach (var section in sections)
        {
            var one = Size($"sections[{read.Count}].at_m", section.AtM * 1000.0).Then(at => section.RadiiMm is { } radii ? Rim(read.Count, at, radii, section) :
                Size($"sections[{read.Count}].diameter_x_mm", section.DiameterXMm).Then(x =>
                Size($"sections[{read.Count}].diameter_y_mm", section.DiameterYMm ?? section.DiameterXMm).Then<LogSection>(y =>
                    new LogSection(at, x, y, section.OffsetXMm ?? 0.0, section.OffsetYMm ?? 0.0))));
            if (one is not Outcome<LogSection>.Done(var done))
                return one.Then<IReadOnlyList<LogSection>>(_ => read);
            read.Add(done);
        }

        return read;
    }

    private static Outcome<LogSection> Rim(int index, Length at, IReadOnlyList<double> radii, SectionFile section) => radii.Count >= LogSection.RadiiMin && radii.All(radius => radius is > 0.0 and < 5000.0)
        ? LogSection.Measured(at, radii, section.OffsetXMm ?? 0.0, section.OffsetYMm ?? 0.0)
        : new Refusal($"sections[{index}].radii_mm", $"{radii.Count} numbers", $"{LogSection.RadiiMin} or more, each over 0");

    private static Outcome<Length> Size(string what, double? given) => given is { } mm && Length.Accepts(mm / 1000.0)
        ? Length.FromMillimetres(mm)
        : new Refusal(what, given is { } wrong ? wrong.ToString(CultureInfo.InvariantCulture) : "nothing", "a number, 0 or more");

    private static Outcome<LogShape> Named(Outcome<LogShape> shape) => shape is Outcome<LogShape>.Refused(var reasons)
        ? new Outcome<LogShape>.Refused([.. reasons.Select(reason => reason with { What = "FILE, " + reason.What })])
        : shape;
}

internal sealed record SectionFile(double? AtM, double? DiameterXMm, double? DiameterYMm, double? OffsetXMm, double? OffsetYMm, IReadOnlyList<double>? RadiiMm = null);
