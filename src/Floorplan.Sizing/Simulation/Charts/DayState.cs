namespace Floorplan.Sizing.Simulation.Charts;

/// <summary>What a person or a station is at, in the order in which charts stack it. Every moment is one of those of its kind.</summary>
public enum DayState
{
    /// <summary>A person works.</summary>
    Work,

    /// <summary>A person carries, or brings back what carried.</summary>
    Carry,

    /// <summary>A person goes somewhere with empty hands.</summary>
    Walk,

    /// <summary>A person empties a bin.</summary>
    Empty,

    /// <summary>A person washes hands.</summary>
    Wash,

    /// <summary>All rest together.</summary>
    Rest,

    /// <summary>A person has nothing to do.</summary>
    Wait,

    /// <summary>A station is worked on by hand, or somebody is on the way to it.</summary>
    ByHand,

    /// <summary>A station works without hands: a cycle, a stay.</summary>
    ByItself,

    /// <summary>All that is at a station is done and is not taken on: what follows has no room, or nobody carries.</summary>
    Blocked,

    /// <summary>As many items as begin a job wait at a station, and nobody works on them.</summary>
    NoHands,

    /// <summary>Nothing is at a station, or less than a batch.</summary>
    Starved,
}
