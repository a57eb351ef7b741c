using System.Reflection;
using System.Runtime.InteropServices;

namespace Boardwright.Quantities.Tests;

public sealed class QuantityShapeTests
{
    public static TheoryData<Type> Structs() => [.. typeof(Length).Assembly.GetExportedTypes().Where(t => t.IsValueType && !t.IsEnum && t != typeof(NominalThickness))];

    [Theory, MemberData(nameof(Structs))]
    public void A_quantity_is_one_double_and_cannot_be_made_from_a_bare_number(Type type)
    {
        Assert.Equal(8, Marshal.SizeOf(Activator.CreateInstance(type)!));
        Assert.DoesNotContain(type.GetConstructors(BindingFlags.Public | BindingFlags.Instance), c => c.GetParameters().Length > 0);
        Assert.DoesNotContain(type.GetMethods(BindingFlags.Public | BindingFlags.Static), m => m.Name is "Trusted" or "op_Implicit");
    }

    [Fact]
    public void Values_not_a_number_or_out_of_range_are_not_taken()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromMetres(double.NaN));
        Assert.Throws<ArgumentOutOfRangeException>(() => MoistureContent.FromPercent(-0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => RelativeHumidity.FromPercent(100.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Temperature.FromCelsius(double.PositiveInfinity));
        Assert.Throws<ArgumentOutOfRangeException>(() => NominalThickness.FromQuarters(0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoardFeet.From(double.NaN));
    }

    [Fact]
    public void A_board_foot_of_nominal_wood_is_a_foot_by_a_foot_by_an_inch() =>
        Assert.Equal(0.002359737216, BoardFeet.CubicMetresNominal, 15);
}
