namespace Boardwright.Yard.Book.Facts;

/// <summary>The place itself and what its band mill takes.</summary>
public sealed record YardDescribed(
    string Name, string Place, double AltitudeM, double LatitudeDeg, double ThroatMm, double LogLengthMaxM, double KerfMm, double PlanerWidthMm) : SetupFact;

public enum PlaceKind
{
    LogYard,
    Shed,
    Row,
    Store,
    Workshop,
}

/// <summary>Somewhere wood lies. A shed has a roof; a row is in the open.</summary>
public sealed record PlaceNamed(string Place, PlaceKind Type, bool Signal = true) : SetupFact;

/// <summary>Someone who works here, what they do, what an hour costs, and whether they may load a kiln.</summary>
public sealed record PersonNamed(string Person, string Role, decimal PaidPerHourMoney, bool LoadsKilns = false, bool LeadsLoading = false) : SetupFact;

/// <summary>An editable figure of the house: a price, a rate, a share. The name is the key.</summary>
public sealed record SettingSet(string Name, double Value, string Unit) : SetupFact;

/// <summary>Prices of one species per board foot, 4/4, and the share lost to drying defects and trimming.</summary>
public sealed record SpeciesPriced(
    string Species, decimal DryFasMoney, decimal Dry1cMoney, decimal Dry2aMoney, decimal GreenFasMoney, decimal Green1cMoney, decimal Green2aMoney,
    Band FalldownBoardsPct, Band? FalldownSlabsPct = null) : SetupFact;

/// <summary>A low, a likely and a high value.</summary>
public sealed record Band(double Low, double Likely, double High);

/// <summary>Days in a log or unstacked boards before stain, borers and end checks; null where none is expected. Common practice, editable.</summary>
public sealed record DamageDaysSet(string StainGroup, DamageDays Below4C, DamageDays From4To15C, DamageDays Above15C) : SetupFact;

/// <summary>Days before each kind of damage.</summary>
public sealed record DamageDays(int? StainDays = null, int? BorerDays = null, int? EndCheckDays = null);
