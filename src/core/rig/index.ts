export { armDirection, droopTurn, mountDirection, pitchTurn, type Side, splayTurn, yawTurn } from "./direction"
