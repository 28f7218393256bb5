// @ts-check

/** What explains how the ends move. */
export const MOVING = ['rear-top-stop', 'rear-bottom-stop', 'front-top-stop', 'front-bottom-stop', 'front-tire-off', 'rear-tire-off', 'wheelie-bar'];

/** What explains the loads of tyres and bars. */
export const LOADS = [...MOVING, 'rear-spring-loose', 'rear-slip-past-peak', 'shift', 'clutch-locked'];

/** What explains the grip. */
export const GRIP = ['rear-slip-past-peak', 'rear-tire-off', 'shift', 'clutch-locked', 'rear-top-stop', 'wheelie-bar', 'rear-grip-floor'];

/** What explains how hard the car is driven. */
export const DRIVE = ['clutch-locked', 'shift', 'rear-slip-past-peak'];
