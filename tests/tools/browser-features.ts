/**
 * Chromium loads the pages of its address bar's list of proposals with every new window, that is with every test, and
 * that takes longer than opening the bench's flat drawing. No test types an address.
 */
const unused = ["WebUIOmniboxPopup", "WebUIOmniboxAimPopup", "WebUIOmniboxFullPopup"]

/** What Playwright itself turns off. Of two such switches Chromium reads the last only, so ours has to say these too. */
const playwrights = [
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "DestroyProfileOnBrowserClose",
  "HttpsUpgrades",
  "HttpsFirstBalancedModeAutoEnable",
  "LensOverlay",
  "MediaRouter",
  "PaintHolding",
  "ThirdPartyStoragePartitioning",
  "AvoidCorsURLLoaderRestartOnRedirect",
  "TcpPortRandomizationWin",
  "OptimizationHints",
  "NetworkTimeServiceQuerying",
  "AimEnabled",
  "PreconnectToSearch",
  "msForceBrowserSignIn",
  "msEdgeUpdateLaunchServicesPreferredVersion",
]

/** Features of the test browser that are off; a Chromium that does not know one of them passes over it. */
export const featuresOff: readonly string[] = [...playwrights, ...unused]
