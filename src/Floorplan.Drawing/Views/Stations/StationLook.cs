namespace Floorplan.Drawing.Views.Stations;

/// <summary>How much a sheet says about its stations.</summary>
public enum StationLook
{
    /// <summary>Item number, name, width and depth.</summary>
    Full,

    /// <summary>Item number and name, drawn thin, so that what the sheet is about stands out.</summary>
    Quiet,

    /// <summary>Item number only.</summary>
    NumberOnly,
}
