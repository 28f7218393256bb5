namespace LaunchSim.BrowserTests.Browsers;

/// <summary>On what a page is looked at.</summary>
/// <param name="Width">Width of the window in CSS pixels.</param>
/// <param name="Height">Its height.</param>
public sealed record Screen(int Width, int Height)
{
    /// <summary>A small phone held upright.</summary>
    public static Screen Phone { get; } = new(360, 740) { IsPhone = true, Density = 2 };

    /// <summary>A laptop in the shop.</summary>
    public static Screen Laptop { get; } = new(1280, 800);

    /// <summary>A screen on the wall.</summary>
    public static Screen Wide { get; } = new(1920, 1080);

    /// <summary>The width in CSS pixels of an A4 sheet at 96 pixels an inch, printed in black on white.</summary>
    public static Screen Paper { get; } = new(794, 1123) { IsPrinted = true };

    /// <summary>Fingers in place of a mouse, and a viewport that takes its width from the page's word.</summary>
    public bool IsPhone { get; init; }

    /// <summary>Device pixels in a CSS pixel.</summary>
    public float Density { get; init; } = 1;

    /// <summary>Whether a dark scheme is preferred.</summary>
    public bool IsDark { get; init; }

    /// <summary>Whether less motion is preferred.</summary>
    public bool HasLessMotion { get; init; }

    /// <summary>Whether the system imposes a few colours of high contrast.</summary>
    public bool HasForcedColours { get; init; }

    /// <summary>Whether the page is laid out for print.</summary>
    public bool IsPrinted { get; init; }
}
