namespace Boardwright.Planning;

/// <summary>Stacks that go into a kiln together, in the order in which a <see cref="Timetable"/> places them.</summary>
internal readonly record struct Grouped(int Kiln, int[] Stacks);
