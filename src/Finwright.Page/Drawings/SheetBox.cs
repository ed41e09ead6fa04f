namespace Finwright.Page.Drawings;

/// <summary>The part of the drawing's plane that is seen, mm. It keeps still while the drawing changes a little, so that nothing jumps under the hand.</summary>
/// <param name="Left">Left edge.</param>
/// <param name="Top">Upper edge.</param>
/// <param name="Width">Width.</param>
/// <param name="Height">Height.</param>
public readonly record struct SheetBox(double Left, double Top, double Width, double Height)
{
    // Edges lie on whole steps, mm; a box with this many steps to spare is taken in.
    private const double Step = 20;
    private const int SpareSteps = 4;

    /// <summary>Right edge.</summary>
    public double Right => Left + Width;

    /// <summary>Lower edge.</summary>
    public double Bottom => Top + Height;

    /// <summary>As SVG writes it.</summary>
    public string Text => $"{SvgNumber.Of(Left)} {SvgNumber.Of(Top)} {SvgNumber.Of(Width)} {SvgNumber.Of(Height)}";

    /// <summary>The box for what is drawn now.</summary>
    /// <param name="left">Leftmost place of the drawing, mm.</param>
    /// <param name="top">Uppermost.</param>
    /// <param name="right">Rightmost.</param>
    /// <param name="bottom">Lowest.</param>
    /// <param name="moves">Whether the hand moves: the box then only grows.</param>
    public SheetBox Holding(double left, double top, double right, double bottom, bool moves)
    {
        SheetBox snug = Of(left, top, right, bottom);
        if (Width <= 0)
            return snug;
        bool holds = snug.Left >= Left && snug.Top >= Top && snug.Right <= Right && snug.Bottom <= Bottom;
        bool isLoose = Width - snug.Width > SpareSteps * Step || Height - snug.Height > SpareSteps * Step;
        if (holds && (moves || !isLoose))
            return this;
        return moves ? Of(Math.Min(Left, left), Math.Min(Top, top), Math.Max(Right, right), Math.Max(Bottom, bottom)) : snug;
    }

    private static SheetBox Of(double left, double top, double right, double bottom)
    {
        double x = Step * Math.Floor(left / Step), y = Step * Math.Floor(top / Step);
        return new(x, y, Step * Math.Ceiling(right / Step) - x, Step * Math.Ceiling(bottom / Step) - y);
    }
}
