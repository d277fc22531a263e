export { type DrawnBalance, type DrawnHold, drawnBalance } from "./fullDraw"
export { type GravityMoments, gravityMoments } from "./moments"
export { gravityInBow, poseRotation } from "./pose"
