namespace Floorplan.Drawing.Scene;

/// <summary>Painting order, from the paper up. Items of one band keep the order in which they were added.</summary>
public enum Band
{
    Tint,
    Hatch,
    Object,
    Wall,
    Flow,
    Annotation,
    Text,
}
