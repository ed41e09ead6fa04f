using System.Runtime.Intrinsics;
using CsCheck;
using Finwright.Numerics.Differentiation;
using static Finwright.Numerics.Differentiation.JetMath;

namespace Finwright.Numerics.Tests.Differentiation;

public sealed class JetTests
{
    private const double Step = 1e-6;

    // Every operation once, away from the edges of its domain.
    private static T Formula<T>(T x, T y)
        where T : struct, IJet<T> =>
        Exp(0.3 * x) * Log(y + 1) - Square(x) / (y + 2) + Pow(y, 1.7) * Tanh(x - y) + Sqrt(Square(x * y) + 1 - 0.5) + Max(x, -100) - Min(y, 100) + (2 - x);

    [Fact]
    public void Derivatives_agree_with_differences() => Gen.Select(Gen.Double[0.2, 3], Gen.Double[0.2, 3]).Hold((x, y) =>
    {
        double Value(double a, double b) => Formula(new Real(a), new Real(b)).Value;
        double byX = (Value(x + Step, y) - Value(x - Step, y)) / (2 * Step), byY = (Value(x, y + Step) - Value(x, y - Step)) / (2 * Step);

        Jet4 four = Formula(Jet4.Variable(x, 0), Jet4.Variable(y, 3));
        Assert.Equal(Value(x, y), four.Value, 1e-13 * Math.Abs(four.Value) + 1e-13);
        Assert.Equal(byX, four.Slope.GetElement(0), 1e-6 * (1 + Math.Abs(byX)));
        Assert.Equal(byY, four.Slope.GetElement(3), 1e-6 * (1 + Math.Abs(byY)));
        Assert.Equal(0, four.Slope.GetElement(1));

        Jet12 twelve = Formula(Jet12.FromFirst(Jet4.Variable(x, 0)), Jet12.FromSecond(Jet4.Variable(y, 2)));
        Assert.Equal(four.Slope.GetElement(0), twelve.First.GetElement(0), 1e-12 * (1 + Math.Abs(byX)));
        Assert.Equal(four.Slope.GetElement(3), twelve.Second.GetElement(2), 1e-12 * (1 + Math.Abs(byY)));
        Assert.Equal(Vector256<double>.Zero, twelve.Third);

        Jet12 third = Formula(Jet12.OfThird(x, 1), Jet12.Constant(y));
        Assert.Equal(four.Slope.GetElement(0), third.Third.GetElement(1), 1e-12 * (1 + Math.Abs(byX)));
    });

    [Fact]
    public void Bounds_cut_the_dependence_where_they_hold()
    {
        Jet4 x = Jet4.Variable(2, 0);
        Assert.Equal(3, Max(x, 3).Value);
        Assert.Equal(0, Max(x, 3).Slope.GetElement(0));
        Assert.Equal(1, Min(x, 3).Slope.GetElement(0));
        Assert.Equal(0, Min(x, 1).Slope.GetElement(0));
    }
}
