using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Views;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>How one kind of service point is shown: its drawing, its name in legends and tables, its layer and its sheets.</summary>
internal abstract class ServiceSymbol
{
    /// <summary>Of the small circle that most symbols are made from, mm of paper.</summary>
    protected const double Radius = 1.3;

    public abstract string Layer { get; }

    public abstract ServiceSheet Sheets { get; }

    public abstract string Name(ServicePoint point);

    /// <summary>Draws it and says where its middle came to lie: wall points stand off the wall by their radius.</summary>
    /// <param name="size">What its real size is on paper, mm, made larger where it could not be seen.</param>
    public abstract PaperPoint Draw(SymbolBrush brush, ServicePoint point, PaperPoint at, double size);

    /// <summary>Unit vector on paper, away from its wall; zero for what is on no wall.</summary>
    protected static PaperPoint IntoRoom(ServicePoint point) => point.Wall is { } wall ? wall.Opposite().Direction() : new PaperPoint(0, 0);

    /// <summary>The place that is one radius off the wall.</summary>
    protected static PaperPoint OffWall(ServicePoint point, PaperPoint at) => at + PaperShapes.Times(IntoRoom(point), Radius);
}

/// <summary>The symbol of service points of one type.</summary>
internal abstract class ServiceSymbol<T> : ServiceSymbol
    where T : ServicePoint
{
    public sealed override string Name(ServicePoint point) => Name((T)point);

    public sealed override PaperPoint Draw(SymbolBrush brush, ServicePoint point, PaperPoint at, double size)
        => Draw(brush, (T)point, at, size);

    protected abstract string Name(T point);

    protected abstract PaperPoint Draw(SymbolBrush brush, T point, PaperPoint at, double size);
}
